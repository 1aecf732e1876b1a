/* Why the microcontroller started, as far as it can know. */
#ifndef RESET_CAUSE_H
#define RESET_CAUSE_H

/* power, pin, brownout or watchdog; empty where a boot loader has cleared the cause before us. */
const char *reset_cause(void);

#endif

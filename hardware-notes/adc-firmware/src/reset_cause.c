#include "reset_cause.h"

#include <avr/io.h>
#include <avr/wdt.h>
#include <stdint.h>

static uint8_t cause __attribute__((section(".noinit")));

/* Runs before the memory is set up: after a watchdog reset the watchdog stays on with its shortest time. */
void take_cause(void) __attribute__((naked, used, section(".init3")));
void take_cause(void) {
    cause = MCUSR;
    MCUSR = 0;
    wdt_disable();
}

const char *reset_cause(void) {
    if (cause & _BV(WDRF)) return "watchdog";
    if (cause & _BV(BORF)) return "brownout";
    if (cause & _BV(PORF)) return "power";
    if (cause & _BV(EXTRF)) return "pin";
    return "";
}

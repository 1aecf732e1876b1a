/* Commands from the host: text in, what to do out. */
#ifndef COMMAND_H
#define COMMAND_H

#include <stdint.h>

#define LONGEST_COMMAND 30

enum command_kind { COMMAND_NOTHING, COMMAND_ASK, COMMAND_RATE, COMMAND_MAINS, COMMAND_RANGE, COMMAND_ZERO, COMMAND_REFUSED };

struct command {
    enum command_kind kind;
    uint8_t value;
    const char *reason; /* of a refusal */
};

struct command command_parse(const char *text);

#endif

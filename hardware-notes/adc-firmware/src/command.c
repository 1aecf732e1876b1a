#include "command.h"

#include <stdbool.h>
#include <string.h>

#include "board.h"

#define TEXT_OF(number) #number
#define TEXT(number) TEXT_OF(number)

static struct command refused(const char *reason) {
    struct command command = {.kind = COMMAND_REFUSED, .reason = reason};
    return command;
}

static struct command accepted(enum command_kind kind, uint8_t value) {
    struct command command = {.kind = kind, .value = value};
    return command;
}

/* One to three digits and nothing else; no number of four digits is ever right. */
static bool read_number(const char *text, uint16_t *number) {
    uint8_t digits = 0;
    *number = 0;
    for (; *text; text++) {
        if (*text < '0' || *text > '9' || ++digits > 3) return false;
        *number = (uint16_t)(*number * 10 + (uint16_t)(*text - '0'));
    }
    return digits > 0;
}

static const char *after(const char *text, const char *word) {
    size_t length = strlen(word);
    return strncmp(text, word, length) == 0 ? text + length : NULL;
}

struct command command_parse(const char *text) {
    uint16_t number;
    const char *rest;
    if (!*text) return accepted(COMMAND_NOTHING, 0);
    if (strcmp(text, "?") == 0) return accepted(COMMAND_ASK, 0);
    if (strcmp(text, "zero") == 0) return accepted(COMMAND_ZERO, 0);
    if ((rest = after(text, "rate "))) {
        if (!read_number(rest, &number) || number < SLOWEST_RATE || number > FASTEST_RATE) {
            return refused("rate must be " TEXT(SLOWEST_RATE) " to " TEXT(FASTEST_RATE));
        }
        return accepted(COMMAND_RATE, (uint8_t)number);
    }
    if ((rest = after(text, "mains "))) {
        if (!read_number(rest, &number) || (number != 50 && number != 60)) return refused("mains must be 50 or 60");
        return accepted(COMMAND_MAINS, (uint8_t)number);
    }
    if ((rest = after(text, "range "))) {
        if (!read_number(rest, &number) || number < 1 || number > RANGES) {
            return refused("range must be 1 to " TEXT(RANGES));
        }
        return accepted(COMMAND_RANGE, (uint8_t)number);
    }
    return refused("unknown command; known: ? rate mains range zero");
}

#include "command.h"

#include "check.h"

static void accepts(const char *text, enum command_kind kind, uint8_t value) {
    struct command command = command_parse(text);
    CHECK(command.kind == kind && command.value == value);
}

static void refuses(const char *text, const char *reason) {
    struct command command = command_parse(text);
    CHECK(command.kind == COMMAND_REFUSED);
    CHECK_TEXT(command.reason, reason);
}

static void commands_of_the_page(void) {
    accepts("", COMMAND_NOTHING, 0);
    accepts("?", COMMAND_ASK, 0);
    accepts("rate 2", COMMAND_RATE, 2);
    accepts("rate 200", COMMAND_RATE, 200);
    accepts("mains 50", COMMAND_MAINS, 50);
    accepts("mains 60", COMMAND_MAINS, 60);
    accepts("range 1", COMMAND_RANGE, 1);
    accepts("range 2", COMMAND_RANGE, 2);
    accepts("zero", COMMAND_ZERO, 0);
}

static void out_of_bounds_or_damaged(void) {
    const char *rate = "rate must be 2 to 200", *mains = "mains must be 50 or 60", *range = "range must be 1 to 2";
    const char *unknown = "unknown command; known: ? rate mains range zero";
    refuses("rate 1", rate);
    refuses("rate 201", rate);
    refuses("rate 258", rate); /* would be 2 in eight bits */
    refuses("rate 65538", rate);
    refuses("rate -5", rate);
    refuses("rate 5x", rate);
    refuses("rate  5", rate);
    refuses("rate ", rate);
    refuses("mains 55", mains);
    refuses("range 0", range);
    refuses("range 3", range);
    refuses("rate", unknown);
    refuses("RATE 50", unknown);
    refuses("zero 1", unknown);
    refuses("*IDN?", unknown);
}

/* Whatever comes in, the outcome is a command within its bounds or a refusal. */
static void any_text(void) {
    srandom(2);
    for (int round = 0; round < 200000; round++) {
        char text[LONGEST_COMMAND + 1];
        static const char alphabet[] = "rateminszogu? 0123456789*-\x01\xff";
        int length = (int)(random() % LONGEST_COMMAND);
        for (int i = 0; i < length; i++) text[i] = alphabet[(size_t)random() % (sizeof alphabet - 1)];
        text[length] = '\0';
        struct command command = command_parse(text);
        if (command.kind == COMMAND_RATE) CHECK(command.value >= 2 && command.value <= 200);
        if (command.kind == COMMAND_REFUSED) CHECK(strlen(command.reason) > 10);
    }
}

int main(void) {
    commands_of_the_page();
    out_of_bounds_or_damaged();
    any_text();
    PASSED();
    return 0;
}

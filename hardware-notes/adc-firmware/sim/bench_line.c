/* What the firmware does when something is wrong: over-range, resets, faults, nonsense and errors on the line. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "bench.h"

static int flagged(const struct session *session, char flag) {
    int flagged = 0;
    for (int i = 0; i < session->count; i++) flagged += strchr(session->readings[i].flags, flag) != NULL;
    return flagged;
}

static double share_flagged(double volts, char flag) {
    struct input input = {.volts = volts};
    struct session *session = power_on(USUAL_NOISE, true, &input);
    session_forget(session);
    session_run(session, 1);
    double share = 100.0 * flagged(session, flag) / session->count;
    power_off(session);
    return share;
}

static void over_range(void) {
    report("over-range high flagged at +31 V", share_flagged(31, 'H'), "%", ">=", 100);
    report("over-range low flagged at -31 V", share_flagged(-31, 'L'), "%", ">=", 100);
    report("over-range flagged at 28 V", share_flagged(28, 'H') + share_flagged(-28, 'L'), "%", "<=", 0);
}

static void zero_command(void) {
    struct input input = {.volts = 0.15}; /* stands for the resistors' tolerance */
    struct session *session = power_on(USUAL_NOISE, true, &input);
    session_command(session, "zero");
    session_run(session, 0.5);
    chip_reset_pin(session->chip);
    session_run(session, 1.2);
    session_forget(session);
    session_run(session, 1);
    report("zero command: left of an offset of 150 mV, after a reset", fabs(mean_of(session)) * 1e3, "mV", "<=", 2);
    input.volts = 6;
    session_run(session, 0.1);
    session_command(session, "zero");
    session_run(session, 0.5);
    report("zero command with 6 V at the input is refused", session->refusals, "", ">=", 1);
    power_off(session);
}

/* No sample from before a change, and none of half a mains period, is in the first reading after it. */
static void first_readings_after_changes(void) {
    static const char *const changes[] = {"rate 200", "range 2", "zero", "mains 60", "zero", "range 1", "rate 10", "mains 50"};
    struct input input = {.volts = 0.03};
    struct session *session = power_on(USUAL_NOISE, true, &input);
    double farthest = 0;
    for (size_t i = 0; i < sizeof changes / sizeof *changes; i++) {
        session_command(session, changes[i]);
        session_run(session, 0.6);
        int first = session->after_change;
        farthest = fmax(farthest, fabs(session->readings[first].value - session->readings[first + 3].value));
    }
    report("first reading after a change, against the fourth", farthest * 1e3, "mV", "<=", 12);
    power_off(session);
}

static void mains_is_remembered(void) {
    struct input input = {.volts = -1.0};
    struct session *session = power_on(USUAL_NOISE, true, &input);
    report("as new: mains", session->reader.mains, "Hz", "<=", 50);
    session_command(session, "mains 60");
    report("  lines damaged by the storing", session->damaged, "", "<=", 0);
    chip_reset_pin(session->chip);
    session_run(session, 1.2);
    report("mains 60, then a reset: mains", session->reader.mains, "Hz", ">=", 60);
    power_off(session);
}

static void resets(void) {
    struct input input = {.volts = -1.0};
    struct session *session = power_on(USUAL_NOISE, true, &input);
    chip_reset_pin(session->chip);
    session_run(session, 2);
    report("reset by DTR: said so in the start line", strcmp(session->reader.reset, "pin") == 0, "", ">=", 1);
    chip_break_sampling(session->chip);
    session_run(session, 2.5);
    report("sampling stopped: watchdog restarts, said so", strcmp(session->reader.reset, "watchdog") == 0, "", ">=", 1);
    session_forget(session);
    session_run(session, 1);
    report("  and readings come again", session->count, "in 1 s", ">=", 49);
    power_off(session);
}

static void nonsense_in(void) {
    char nonsense[64];
    struct input input = {.volts = -1.0};
    struct session *session = power_on(USUAL_NOISE, true, &input);
    session_forget(session);
    srandom(4);
    for (int i = 0; i < 200; i++) {
        for (size_t k = 0; k < sizeof nonsense; k++) nonsense[k] = (char)(random() & 0xFF);
        chip_receive(session->chip, nonsense, sizeof nonsense);
        session_run(session, 0.05);
    }
    report("10 s of random bytes in: lines damaged", session->damaged, "", "<=", 0);
    report("  readings kept coming", session->count, "in 10 s", ">=", 480);
    report("  refused", session->refusals, "lines", ">=", 50);
    power_off(session);
}

/* More questions than the line has room to answer: data lines are left out whole, and each gap says so. */
static void full_line(void) {
    struct input input = {.volts = -1.0};
    struct session *session = power_on(USUAL_NOISE, true, &input);
    session_command(session, "rate 200");
    session_forget(session);
    for (int i = 0; i < 400; i++) {
        chip_receive(session->chip, "?\n", 2);
        session_run(session, 0.005);
    }
    int untold = 0;
    for (int i = 1; i < session->count; i++) {
        int gap = session->readings[i].seconds - session->readings[i - 1].seconds > 0.0075;
        untold += gap != (strchr(session->readings[i].flags, 'g') != NULL);
    }
    report("line overfull for 2 s: readings left out", 400 - session->count, "of 400", ">=", 20);
    report("  gaps without their flag, or flags without a gap", untold, "", "<=", 0);
    report("  lines damaged", session->damaged, "", "<=", 0);
    power_off(session);
}

static void line_errors(void) {
    struct input input = {.volts = -1.0};
    struct session *session = power_on(USUAL_NOISE, true, &input);
    session_command(session, "rate 200");
    session_forget(session);
    srandom(5);
    session->flips_per_byte = 0.01;
    session_run(session, 30);
    report("1 byte in 100 with a flipped bit: lines caught", session->damaged, "of 6000", ">=", 500);
    report("  lines believed that were never sent", session->wrong, "", "<=", 0);
    report("  lines that came through", session->count, "", ">=", 4000);
    power_off(session);
}

void try_the_line(void) {
    over_range();
    zero_command();
    first_readings_after_changes();
    mains_is_remembered();
    resets();
    nonsense_in();
    full_line();
    line_errors();
}

/* Measures the firmware on a simulated chip and holds each figure against its bound. Exit 1 when one is missed. */
#include "bench.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char *elf;
static int missed;

void report(const char *what, double measured, const char *unit, const char *relation, double bound) {
    int good = relation[0] == '<' ? measured <= bound : measured >= bound;
    printf("%-58s %10.4g %-10s bound %s %-8g %s\n", what, measured, unit, relation, bound, good ? "ok" : "MISSED");
    missed += !good;
}

static double input_volts(const void *context, double seconds) {
    const struct input *input = context;
    return input->volts + input->volts_per_second * seconds +
           input->hum_volts * sin(2 * M_PI * input->hum_hz * seconds + 0.7);
}

struct session *power_on(double noise_codes, bool dither, const struct input *input) {
    struct session *session = calloc(1, sizeof *session);
    if (!session) exit(1);
    session->model.noise_codes = noise_codes;
    session->model.dither_fitted = dither;
    session_power_on(session, elf, input_volts, input);
    session_run(session, 1.2);
    return session;
}

void power_off(struct session *session) {
    chip_power_off(session->chip);
    free(session);
}

double mean_of(const struct session *session) {
    double sum = 0;
    for (int i = 0; i < session->count; i++) sum += session->readings[i].value;
    return sum / session->count;
}

int main(int count, char **arguments) {
    if (count != 2) {
        fputs("usage: bench FIRMWARE.elf\n", stderr);
        return 2;
    }
    elf = arguments[1];
    measure_the_signal();
    try_the_line();
    if (missed) {
        printf("%d bounds missed\n", missed);
    } else {
        puts("every bound met");
    }
    return missed != 0;
}

/* What the measured cases share: power on, report against a bound. */
#ifndef BENCH_H
#define BENCH_H

#include <stdbool.h>

#include "session.h"

#define USUAL_NOISE 0.3 /* codes rms: a quiet USB supply; assumed, from memory */

/* What is at the probe tip; may change while the session runs. */
struct input {
    double volts;
    double volts_per_second;
    double hum_volts; /* peak */
    double hum_hz;
};

/* Prints the figure beside its bound (relation "<=" or ">=") and remembers when it is missed. */
void report(const char *what, double measured, const char *unit, const char *relation, double bound);

/* A board that has been on for 1.2 s, and so is sending. */
struct session *power_on(double noise_codes, bool dither, const struct input *input);

void power_off(struct session *session);

double mean_of(const struct session *session);

/* The groups of cases. */
void measure_the_signal(void);
void try_the_line(void);

#endif

/*
 * The probe and the converter as far as a reading depends on them: divider and its capacitor, gain of the range, dither network,
 * noise, uneven code widths, rails. The chip simulator knows only the finished code. Values: ../probe.md and its netlists.
 */
#ifndef BOARD_MODEL_H
#define BOARD_MODEL_H

#include <stdbool.h>
#include <stdint.h>

#define CODES 1024

struct board_model {
    double (*volts)(const void *input, double seconds); /* at the probe tip */
    const void *input;
    double noise_codes;   /* rms of the noise at the converter, in codes */
    bool dither_fitted;   /* the three parts from the dither pin to the divider */
    bool dither_pin_high;
    /* State, set up by board_model_begin. */
    uint64_t random;
    double last_seconds;
    double divider_volts; /* behind the divider's low-pass, as volts at the tip */
    double ramp_volts;    /* on the capacitor of the dither network */
    double edges[CODES];  /* input in codes at which each code begins */
};

void board_model_begin(struct board_model *model, uint64_t seed);

/* The code that the converter gives at this moment on channel 0 (range 1) or 1 (range 2). Time must not go back. */
uint16_t board_model_code(struct board_model *model, int channel, double seconds);

double board_model_gaussian(struct board_model *model);

#endif

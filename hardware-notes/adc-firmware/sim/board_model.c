#include "board_model.h"

#include <math.h>

#define REFERENCE_VOLTS 5.0
#define DIVISION 12.0
#define RANGE_2_GAIN 5.0
#define DIVIDER_TAU_SECONDS (825e3 * 1e-9) /* 9.9 M, 9.9 M, 1.8 M and 2.2 M in parallel, with 1 nF */
#define RAMP_TAU_SECONDS (22e3 * 1e-6)     /* 22 k and 1 uF */
#define RAIL_MARGIN_CODES 4.0              /* the buffer stops 20 mV short of its rails */
#define CODE_WIDTH_SPREAD 0.15             /* rms; the sum wanders by about half a code over the range */

static double uniform(struct board_model *model) {
    model->random = model->random * 6364136223846793005u + 1442695040888963407u;
    return (double)(model->random >> 11) / 9007199254740992.0;
}

double board_model_gaussian(struct board_model *model) {
    double u = 1.0 - uniform(model);
    return sqrt(-2.0 * log(u)) * cos(2.0 * M_PI * uniform(model));
}

/* Code c of an even converter begins at c - 0.5; here each edge is off by a little of its own. */
static void spread_edges(struct board_model *model) {
    for (int code = 0; code < CODES; code++) {
        model->edges[code] = code - 0.5 + CODE_WIDTH_SPREAD * board_model_gaussian(model);
        if (code > 0 && model->edges[code] < model->edges[code - 1]) model->edges[code] = model->edges[code - 1];
    }
}

void board_model_begin(struct board_model *model, uint64_t seed) {
    model->random = seed;
    model->last_seconds = 0;
    model->divider_volts = model->volts(model->input, 0);
    model->ramp_volts = REFERENCE_VOLTS / 2;
    spread_edges(model);
}

static double towards(double from, double to, double seconds, double tau) { return to + (from - to) * exp(-seconds / tau); }

static uint16_t convert(const struct board_model *model, double codes) {
    int code = (int)floor(codes);
    code = code < 0 ? 0 : code > CODES - 1 ? CODES - 1 : code;
    while (code < CODES - 1 && codes >= model->edges[code + 1]) code++;
    while (code > 0 && codes < model->edges[code]) code--;
    return (uint16_t)code;
}

uint16_t board_model_code(struct board_model *model, int channel, double seconds) {
    double step = seconds - model->last_seconds;
    double pin_volts = model->dither_pin_high ? REFERENCE_VOLTS : 0;
    model->last_seconds = seconds;
    model->divider_volts = towards(model->divider_volts, model->volts(model->input, seconds), step, DIVIDER_TAU_SECONDS);
    model->ramp_volts = towards(model->ramp_volts, pin_volts, step, RAMP_TAU_SECONDS);

    double dither_volts = model->dither_fitted ? model->ramp_volts - REFERENCE_VOLTS / 2 : 0;
    double at_divider = (model->divider_volts + dither_volts) / DIVISION;
    double at_converter = REFERENCE_VOLTS / 2 + at_divider * (channel == 1 ? RANGE_2_GAIN : 1.0);
    double codes = at_converter / REFERENCE_VOLTS * CODES;
    codes = fmax(RAIL_MARGIN_CODES, fmin(CODES - RAIL_MARGIN_CODES, codes));
    return convert(model, codes + model->noise_codes * board_model_gaussian(model));
}

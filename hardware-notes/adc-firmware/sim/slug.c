#include "slug.h"

#include <math.h>
#include <stddef.h>

/* 455 kHz, loaded Q 70, 7 kHz a turn: 3 dB down at half of this on either side. */
#define WIDTH_TURNS 0.93

static const struct {
    double seconds;
    double turns;
} path[] = {{0, -1.2}, {2, -1.2}, {SLUG_FIRST_AT_PEAK_SECONDS, 0}, {6.25, 0.5}, {6.75, 0.5}, {SLUG_BACK_AT_PEAK_SECONDS, 0}};

double slug_turns(double seconds) {
    size_t last = sizeof path / sizeof *path - 1;
    if (seconds <= path[0].seconds) return path[0].turns;
    for (size_t i = 1; i <= last; i++) {
        if (seconds <= path[i].seconds) {
            double part = (seconds - path[i - 1].seconds) / (path[i].seconds - path[i - 1].seconds);
            return path[i - 1].turns + part * (path[i].turns - path[i - 1].turns);
        }
    }
    return path[last].turns;
}

double slug_volts(double seconds) {
    double off = 2 * slug_turns(seconds) / WIDTH_TURNS;
    return -(SLUG_REST_VOLTS + SLUG_PEAK_VOLTS / sqrt(1 + off * off));
}

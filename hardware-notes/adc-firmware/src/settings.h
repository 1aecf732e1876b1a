/* What the user may choose, and the timing that follows from it. */
#ifndef SETTINGS_H
#define SETTINGS_H

#include <stdint.h>

struct settings {
    uint8_t mains_hz; /* 50 or 60 */
    uint8_t rate;     /* readings a second asked for, 2 to 200 */
    uint8_t range;    /* 1 to RANGES */
};

#define DEFAULT_SETTINGS {.mains_hz = 50, .rate = 50, .range = 1}

/* Blocks from one reading to the next: the fewest that are not faster than asked. */
uint8_t blocks_per_reading(const struct settings *settings);

/* Blocks averaged: whole mains periods, at least one, and at least all blocks since the reading before. */
uint8_t blocks_per_window(const struct settings *settings);

uint16_t block_micros(const struct settings *settings);

#endif

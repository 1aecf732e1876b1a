/* Finds the counts at zero input: the mean over half a second, refused where it cannot be zero. */
#ifndef ZEROING_H
#define ZEROING_H

#include "average.h"

struct zeroing {
    uint32_t sum;
    uint8_t wanted; /* blocks in half a second; 0 when idle */
    uint8_t taken;
    uint8_t clipped;
};

void zeroing_begin(struct zeroing *zeroing, uint8_t mains_hz);
void zeroing_stop(struct zeroing *zeroing);

/* Takes the next block; true when the half second is over. */
bool zeroing_add(struct zeroing *zeroing, struct block block);

/* After the half second: true and the counts at zero, or false when the input was not near zero. */
bool zeroing_result(const struct zeroing *zeroing, int32_t *zero_counts);

bool zero_is_plausible(int32_t zero_counts);

#endif

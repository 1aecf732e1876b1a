/* Samples the converter on a timer and hands over blocks of samples. */
#ifndef SAMPLER_H
#define SAMPLER_H

#include <stdbool.h>
#include <stdint.h>

#include "average.h"
#include "settings.h"

struct sampled {
    struct block block;
    uint8_t setup; /* which call of sampler_set it was taken under */
    uint8_t lost;  /* blocks before this one that nobody fetched in time */
};

void sampler_start(const struct settings *settings);

/* Takes effect at the next block; returns the number that its blocks carry in setup. */
uint8_t sampler_set(const struct settings *settings);

bool sampler_take(struct sampled *sampled);

#endif

/* The mean over whole mains periods, sliding on by blocks of a quarter period. */
#ifndef AVERAGE_H
#define AVERAGE_H

#include <stdbool.h>
#include <stdint.h>

#include "board.h"

#define CLIPPED_LOW 1
#define CLIPPED_HIGH 2

/* The rate of 2 readings a second at 60 Hz needs the longest window. */
#define LONGEST_WINDOW 120

struct block {
    uint16_t sum;    /* of SAMPLES_PER_BLOCK codes */
    uint8_t clipped; /* CLIPPED_ flags of any of its samples */
};

struct average {
    struct block blocks[LONGEST_WINDOW];
    uint32_t sum;
    uint8_t window; /* blocks averaged */
    uint8_t step;   /* blocks from reading to reading */
    uint8_t filled;
    uint8_t next;
    uint8_t since;
    uint8_t low;  /* blocks in the window that clipped */
    uint8_t high;
};

struct mean {
    int32_t counts;  /* mean code x SAMPLES_PER_PERIOD */
    uint8_t clipped;
};

void average_begin(struct average *average, uint8_t window, uint8_t step);

/* Takes the next block; true when a reading is due, which is then in *mean. */
bool average_add(struct average *average, struct block block, struct mean *mean);

/* Adds a sample to a block. */
static inline void block_add(struct block *block, uint16_t code) {
    block->sum += code;
    if (code < LOWEST_GOOD_CODE) block->clipped |= CLIPPED_LOW;
    if (code > HIGHEST_GOOD_CODE) block->clipped |= CLIPPED_HIGH;
}

#endif

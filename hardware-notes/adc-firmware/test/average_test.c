#include "average.h"

#include <math.h>

#include "check.h"
#include "settings.h"

static struct block flat(uint16_t code) {
    struct block block = {.sum = (uint16_t)(code * SAMPLES_PER_BLOCK)};
    return block;
}

static void a_steady_input_reads_its_code_times_128(void) {
    struct average average;
    struct mean mean;
    average_begin(&average, 8, 5);
    for (int i = 0; i < 100; i++) {
        if (average_add(&average, flat(700), &mean)) CHECK(mean.counts == 700 * SAMPLES_PER_PERIOD);
    }
}

static void the_first_reading_needs_a_full_window_and_each_next_one_a_step(void) {
    struct average average;
    struct mean mean;
    int due[40], count = 0;
    average_begin(&average, 8, 5);
    for (int i = 1; i <= 24; i++) {
        if (average_add(&average, flat(1), &mean)) due[count++] = i;
    }
    CHECK(count == 4 && due[0] == 8 && due[1] == 13 && due[2] == 18 && due[3] == 23);
}

/* Whole periods of hum leave the mean alone, wherever in the period the window begins. */
static void hum_of_whole_periods_averages_out(void) {
    for (int harmonic = 1; harmonic <= 7; harmonic++) {
        struct average average;
        struct mean mean;
        average_begin(&average, BLOCKS_PER_PERIOD, 1);
        for (int n = 0; n < 40 * SAMPLES_PER_BLOCK; n += SAMPLES_PER_BLOCK) {
            struct block block = {0};
            for (int k = 0; k < SAMPLES_PER_BLOCK; k++) {
                double hum = 300 * sin(2 * M_PI * harmonic * (n + k + 0.3) / SAMPLES_PER_PERIOD);
                block_add(&block, (uint16_t)lround(512 + hum));
            }
            if (average_add(&average, block, &mean)) CHECK(labs(mean.counts - 512 * SAMPLES_PER_PERIOD) <= 16);
        }
    }
}

static void clipping_is_flagged_as_long_as_it_is_in_the_window(void) {
    struct average average;
    struct mean mean;
    average_begin(&average, 4, 1);
    for (int i = 0; i < 20; i++) {
        struct block block = flat(600);
        if (i == 8) block.clipped = CLIPPED_HIGH;
        if (i == 10) block.clipped = CLIPPED_LOW;
        if (!average_add(&average, block, &mean)) continue;
        CHECK(!!(mean.clipped & CLIPPED_HIGH) == (i >= 8 && i < 12));
        CHECK(!!(mean.clipped & CLIPPED_LOW) == (i >= 10 && i < 14));
    }
}

static void samples_near_either_end_clip_and_the_ones_inside_do_not(void) {
    for (uint16_t code = 0; code <= TOP_CODE; code++) {
        struct block block = {0};
        block_add(&block, code);
        CHECK((block.clipped == CLIPPED_LOW) == (code < 8));
        CHECK((block.clipped == CLIPPED_HIGH) == (code > 1015));
    }
}

/* Law: a reading is the mean of the last window of blocks, whatever came before. */
static void sliding_equals_adding_up_afresh(void) {
    srandom(1);
    for (int round = 0; round < 200; round++) {
        static struct average average;
        struct mean mean;
        uint16_t sums[400];
        uint8_t window = (uint8_t)(4 * (1 + random() % 30)), step = (uint8_t)(1 + random() % window);
        average_begin(&average, window, step);
        for (int i = 0; i < 400; i++) {
            struct block block = {.sum = (uint16_t)(random() % (TOP_CODE * SAMPLES_PER_BLOCK + 1))};
            sums[i] = block.sum;
            if (!average_add(&average, block, &mean)) continue;
            double sum = 0;
            for (int k = i - window + 1; k <= i; k++) sum += sums[k];
            CHECK(fabs(mean.counts - sum * BLOCKS_PER_PERIOD / window) <= 0.5);
        }
    }
}

static void the_longest_window_holds_every_rate(void) {
    for (uint8_t mains = 50; mains <= 60; mains = (uint8_t)(mains + 10)) {
        for (unsigned rate = SLOWEST_RATE; rate <= FASTEST_RATE; rate++) {
            struct settings settings = {.mains_hz = mains, .rate = (uint8_t)rate, .range = 1};
            CHECK(blocks_per_window(&settings) <= LONGEST_WINDOW);
            CHECK(blocks_per_window(&settings) >= blocks_per_reading(&settings));
            CHECK(blocks_per_window(&settings) % BLOCKS_PER_PERIOD == 0);
        }
    }
}

int main(void) {
    a_steady_input_reads_its_code_times_128();
    the_first_reading_needs_a_full_window_and_each_next_one_a_step();
    hum_of_whole_periods_averages_out();
    clipping_is_flagged_as_long_as_it_is_in_the_window();
    samples_near_either_end_clip_and_the_ones_inside_do_not();
    sliding_equals_adding_up_afresh();
    the_longest_window_holds_every_rate();
    PASSED();
    return 0;
}

#include "settings.h"

#include "board.h"
#include "check.h"

static double rate_of(uint8_t mains, unsigned rate) {
    struct settings settings = {.mains_hz = mains, .rate = (uint8_t)rate, .range = 1};
    return 1e6 / block_micros(&settings) / blocks_per_reading(&settings);
}

/* "The nearest rate that it can do and that is not faster": the next faster one would be too fast. */
static void no_rate_is_faster_than_asked_and_the_next_one_would_be(void) {
    for (uint8_t mains = 50; mains <= 60; mains = (uint8_t)(mains + 10)) {
        for (unsigned rate = SLOWEST_RATE; rate <= FASTEST_RATE; rate++) {
            struct settings settings = {.mains_hz = mains, .rate = (uint8_t)rate, .range = 1};
            double block_rate = mains * BLOCKS_PER_PERIOD;
            int blocks = blocks_per_reading(&settings);
            CHECK(block_rate / blocks <= rate);
            CHECK(blocks == 1 || block_rate / (blocks - 1) > rate);
        }
    }
}

static void usual_rates(void) {
    CHECK(rate_of(50, 2) >= 1.999 && rate_of(50, 2) <= 2.001);
    CHECK(rate_of(50, 50) >= 49.99 && rate_of(50, 50) <= 50.01);
    CHECK(rate_of(50, 200) >= 199.9 && rate_of(50, 200) <= 200.1);
    CHECK(rate_of(60, 200) >= 120.0 && rate_of(60, 200) <= 120.1);
    CHECK(rate_of(50, 30) >= 28.5 && rate_of(50, 30) <= 28.6);
}

/* A block is a quarter of a mains period, to within the tolerance of the mains frequency itself. */
static void blocks_fit_the_mains(void) {
    CHECK(TICKS_PER_SAMPLE_50HZ * SAMPLES_PER_BLOCK == BLOCK_MICROS_50HZ * 16);
    CHECK(TICKS_PER_SAMPLE_60HZ * SAMPLES_PER_BLOCK == BLOCK_MICROS_60HZ * 16);
    CHECK(BLOCK_MICROS_50HZ * BLOCKS_PER_PERIOD == 20000);
    CHECK(labs(BLOCK_MICROS_60HZ * BLOCKS_PER_PERIOD * 60L - 1000000L) < 200);
}

int main(void) {
    no_rate_is_faster_than_asked_and_the_next_one_would_be();
    usual_rates();
    blocks_fit_the_mains();
    PASSED();
    return 0;
}

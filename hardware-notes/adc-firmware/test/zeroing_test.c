#include "zeroing.h"

#include "check.h"

static int blocks_until_done(struct zeroing *zeroing, uint16_t code, uint8_t clipped) {
    struct block block = {.sum = (uint16_t)(code * SAMPLES_PER_BLOCK), .clipped = clipped};
    for (int blocks = 1; blocks < 1000; blocks++) {
        if (zeroing_add(zeroing, block)) return blocks;
    }
    return 0;
}

static void half_a_second_of_whole_periods(uint8_t mains_hz, int blocks) {
    struct zeroing zeroing;
    int32_t zero;
    zeroing_begin(&zeroing, mains_hz);
    CHECK(blocks_until_done(&zeroing, 515, 0) == blocks);
    CHECK(zeroing_result(&zeroing, &zero));
    CHECK(zero == 515 * SAMPLES_PER_PERIOD);
}

static void refuses(uint16_t code, uint8_t clipped) {
    struct zeroing zeroing;
    int32_t zero;
    zeroing_begin(&zeroing, 50);
    CHECK(blocks_until_done(&zeroing, code, clipped) == 100);
    CHECK(!zeroing_result(&zeroing, &zero));
}

static void nothing_happens_when_idle(void) {
    struct zeroing zeroing;
    zeroing_begin(&zeroing, 50);
    zeroing_stop(&zeroing);
    CHECK(blocks_until_done(&zeroing, 512, 0) == 0);
}

int main(void) {
    half_a_second_of_whole_periods(50, 100);
    half_a_second_of_whole_periods(60, 120);
    refuses(512 + 52, 0);
    refuses(512 - 52, 0);
    refuses(512, CLIPPED_HIGH);
    nothing_happens_when_idle();
    PASSED();
    return 0;
}

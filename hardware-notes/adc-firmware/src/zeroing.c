#include "zeroing.h"

void zeroing_begin(struct zeroing *zeroing, uint8_t mains_hz) {
    zeroing->sum = 0;
    zeroing->wanted = (uint8_t)(mains_hz * BLOCKS_PER_PERIOD / 2);
    zeroing->taken = 0;
    zeroing->clipped = 0;
}

void zeroing_stop(struct zeroing *zeroing) { zeroing->wanted = 0; }

bool zeroing_add(struct zeroing *zeroing, struct block block) {
    if (zeroing->taken >= zeroing->wanted) return false;
    zeroing->sum += block.sum;
    zeroing->clipped |= block.clipped;
    return ++zeroing->taken == zeroing->wanted;
}

bool zero_is_plausible(int32_t zero_counts) {
    int32_t shift = zero_counts - NOMINAL_ZERO_COUNTS;
    return shift >= -LARGEST_ZERO_SHIFT && shift <= LARGEST_ZERO_SHIFT;
}

bool zeroing_result(const struct zeroing *zeroing, int32_t *zero_counts) {
    *zero_counts = (int32_t)((zeroing->sum * BLOCKS_PER_PERIOD + zeroing->wanted / 2) / zeroing->wanted);
    return !zeroing->clipped && zero_is_plausible(*zero_counts);
}

#include "average.h"

void average_begin(struct average *average, uint8_t window, uint8_t step) {
    average->sum = 0;
    average->window = window;
    average->step = step;
    average->filled = average->next = average->since = 0;
    average->low = average->high = 0;
}

static void take_in(struct average *average, struct block block) {
    average->sum += block.sum;
    if (block.clipped & CLIPPED_LOW) average->low++;
    if (block.clipped & CLIPPED_HIGH) average->high++;
}

static void let_go(struct average *average, struct block block) {
    average->sum -= block.sum;
    if (block.clipped & CLIPPED_LOW) average->low--;
    if (block.clipped & CLIPPED_HIGH) average->high--;
}

static struct mean mean_of(const struct average *average) {
    uint32_t sum = average->sum * BLOCKS_PER_PERIOD;
    struct mean mean = {
        .counts = (int32_t)((sum + average->window / 2) / average->window),
        .clipped = (uint8_t)((average->low ? CLIPPED_LOW : 0) | (average->high ? CLIPPED_HIGH : 0)),
    };
    return mean;
}

bool average_add(struct average *average, struct block block, struct mean *mean) {
    if (average->filled == average->window) {
        let_go(average, average->blocks[average->next]);
    } else {
        average->filled++;
    }
    take_in(average, block);
    average->blocks[average->next] = block;
    average->next = (uint8_t)((average->next + 1) % average->window);
    if (average->since < average->step) average->since++;
    if (average->filled < average->window || average->since < average->step) return false;
    average->since = 0;
    *mean = mean_of(average);
    return true;
}

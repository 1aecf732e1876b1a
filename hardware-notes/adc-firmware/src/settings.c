#include "settings.h"

#include "board.h"

uint8_t blocks_per_reading(const struct settings *settings) {
    uint16_t blocks_per_second = (uint16_t)settings->mains_hz * BLOCKS_PER_PERIOD;
    return (uint8_t)((blocks_per_second + settings->rate - 1) / settings->rate);
}

uint8_t blocks_per_window(const struct settings *settings) {
    uint8_t periods = (uint8_t)((blocks_per_reading(settings) + BLOCKS_PER_PERIOD - 1) / BLOCKS_PER_PERIOD);
    return (uint8_t)(periods * BLOCKS_PER_PERIOD);
}

uint16_t block_micros(const struct settings *settings) {
    return settings->mains_hz == 60 ? BLOCK_MICROS_60HZ : BLOCK_MICROS_50HZ;
}

#include "crc16.h"

/* The eight shifts done at once; the test holds it against the bit by bit definition. */
uint16_t crc16_add(uint16_t crc, uint8_t byte) {
    uint8_t x = (uint8_t)(crc >> 8) ^ byte;
    x ^= x >> 4;
    return (uint16_t)((crc << 8) ^ ((uint16_t)x << 12) ^ ((uint16_t)x << 5) ^ x);
}

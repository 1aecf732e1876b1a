#include "crc16.h"

#include <stdint.h>

#include "check.h"

static uint16_t of(const char *text) {
    uint16_t crc = CRC16_START;
    while (*text) crc = crc16_add(crc, (uint8_t)*text++);
    return crc;
}

/* The definition in PROTOCOL.md, word for word. */
static uint16_t by_definition(uint16_t crc, uint8_t byte) {
    crc = (uint16_t)(crc ^ (byte << 8));
    for (int i = 0; i < 8; i++) crc = (uint16_t)(crc & 0x8000 ? (crc << 1) ^ 0x1021 : crc << 1);
    return crc;
}

int main(void) {
    CHECK(of("123456789") == 0x29B1); /* the check value of this CRC in the ITU-T V.41 family, start 0xFFFF */
    for (uint32_t crc = 0; crc <= 0xFFFF; crc++) {
        for (unsigned byte = 0; byte <= 0xFF; byte += 5) {
            CHECK(crc16_add((uint16_t)crc, (uint8_t)byte) == by_definition((uint16_t)crc, (uint8_t)byte));
        }
    }
    PASSED();
    return 0;
}

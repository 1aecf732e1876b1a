#include "zero_store.h"

#include <avr/eeprom.h>

#include "board.h"
#include "crc16.h"
#include "zeroing.h"

struct record {
    int32_t zero_counts;
    uint16_t crc;
};

static struct record EEMEM records[RANGES];

static uint16_t crc_of(int32_t value) {
    uint16_t crc = CRC16_START;
    for (uint8_t shift = 0; shift < 32; shift += 8) crc = crc16_add(crc, (uint8_t)((uint32_t)value >> shift));
    return crc;
}

int32_t zero_store_read(uint8_t range) {
    struct record record;
    eeprom_read_block(&record, &records[range - 1], sizeof record);
    if (record.crc != crc_of(record.zero_counts) || !zero_is_plausible(record.zero_counts)) return NOMINAL_ZERO_COUNTS;
    return record.zero_counts;
}

void zero_store_write(uint8_t range, int32_t zero_counts) {
    struct record record = {.zero_counts = zero_counts, .crc = crc_of(zero_counts)};
    eeprom_update_block(&record, &records[range - 1], sizeof record);
}

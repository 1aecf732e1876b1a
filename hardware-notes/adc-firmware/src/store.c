#include "store.h"

#include <avr/eeprom.h>

#include "board.h"
#include "crc16.h"
#include "zeroing.h"

struct record {
    int32_t value;
    uint16_t crc;
};

static struct record EEMEM zeros[RANGES];
static struct record EEMEM mains;

static uint16_t crc_of(int32_t value) {
    uint16_t crc = CRC16_START;
    for (uint8_t shift = 0; shift < 32; shift += 8) crc = crc16_add(crc, (uint8_t)((uint32_t)value >> shift));
    return crc;
}

/* The default where the record is blank or torn. */
static int32_t read_record(const struct record *stored, int32_t otherwise) {
    struct record record;
    eeprom_read_block(&record, stored, sizeof record);
    return record.crc == crc_of(record.value) ? record.value : otherwise;
}

static void write_record(struct record *stored, int32_t value) {
    struct record record = {.value = value, .crc = crc_of(value)};
    eeprom_update_block(&record, stored, sizeof record);
}

int32_t store_read_zero(uint8_t range) {
    int32_t zero_counts = read_record(&zeros[range - 1], NOMINAL_ZERO_COUNTS);
    return zero_is_plausible(zero_counts) ? zero_counts : NOMINAL_ZERO_COUNTS;
}

void store_write_zero(uint8_t range, int32_t zero_counts) { write_record(&zeros[range - 1], zero_counts); }

uint8_t store_read_mains(void) { return read_record(&mains, 50) == 60 ? 60 : 50; }

void store_write_mains(uint8_t mains_hz) { write_record(&mains, mains_hz); }

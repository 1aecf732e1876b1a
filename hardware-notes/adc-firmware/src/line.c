#include "line.h"

#include "crc16.h"

#define LONGEST_PAYLOAD (LINE_SIZE - 6) /* leaves room for *CCCC and the line end */

static void put(struct line *line, char c) {
    if (line->length < LONGEST_PAYLOAD) line->text[line->length++] = c;
}

void line_begin(struct line *line, const char *text) {
    line->length = 0;
    line_text(line, text);
}

void line_text(struct line *line, const char *text) {
    while (*text) put(line, *text++);
}

void line_decimal(struct line *line, uint32_t value, uint8_t places) {
    char digits[11];
    uint8_t count = 0;
    do {
        digits[count++] = (char)('0' + value % 10);
        value /= 10;
    } while (value || count <= places);
    while (count) {
        put(line, digits[--count]);
        if (places && count == places) put(line, '.');
    }
}

void line_unsigned(struct line *line, uint32_t value) { line_decimal(line, value, 0); }

void line_signed(struct line *line, int32_t value) {
    if (value < 0) put(line, '-');
    line_unsigned(line, value < 0 ? -(uint32_t)value : (uint32_t)value);
}

void line_end(struct line *line) {
    static const char hex[] = "0123456789ABCDEF";
    uint16_t crc = CRC16_START;
    for (uint8_t i = 0; i < line->length; i++) crc = crc16_add(crc, (uint8_t)line->text[i]);
    line->text[line->length++] = '*';
    for (int8_t shift = 12; shift >= 0; shift -= 4) line->text[line->length++] = hex[(crc >> shift) & 0xF];
    line->text[line->length++] = '\n';
}

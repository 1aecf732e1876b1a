#include "reader.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static unsigned checksum(const char *bytes, size_t count) {
    unsigned crc = 0xFFFF;
    for (size_t i = 0; i < count; i++) {
        crc ^= (unsigned)(unsigned char)bytes[i] << 8;
        for (int bit = 0; bit < 8; bit++) crc = (crc & 0x8000 ? (crc << 1) ^ 0x1021 : crc << 1) & 0xFFFF;
    }
    return crc;
}

static bool intact(const char *line, size_t length) {
    char expected[6];
    if (length < 6 || length > 250 || line[length - 5] != '*') return false;
    for (size_t i = 0; i < length; i++) {
        if (line[i] < 0x20 || line[i] > 0x7E) return false;
    }
    if (memchr(line, '*', length - 5)) return false;
    snprintf(expected, sizeof expected, "*%04X", checksum(line, length - 5));
    return memcmp(expected, line + length - 5, 5) == 0;
}

static bool value_of(const char *payload, const char *key, char *value, size_t size) {
    char pattern[24];
    snprintf(pattern, sizeof pattern, " %s=", key);
    const char *at = strstr(payload, pattern);
    if (!at) return false;
    at += strlen(pattern);
    size_t length = strcspn(at, " ");
    if (length == 0 || length >= size) return false;
    memcpy(value, at, length);
    value[length] = '\0';
    return true;
}

static double number_of(const char *payload, const char *key) {
    char value[24];
    return value_of(payload, key, value, sizeof value) ? atof(value) : 0;
}

static enum reader_line take_start(struct reader *reader, const char *payload) {
    static const char head[] = "S slugpeak-line 1 ";
    if (strncmp(payload, head, sizeof head - 1) != 0) return READER_OTHER;
    reader->scale = number_of(payload, "scale");
    reader->low = (long)number_of(payload, "low");
    reader->high = (long)number_of(payload, "high");
    reader->rate = number_of(payload, "rate");
    reader->window = number_of(payload, "window");
    reader->mains = number_of(payload, "mains");
    if (!value_of(payload, "why", reader->why, sizeof reader->why)) return READER_DAMAGED;
    if (!value_of(payload, "reset", reader->reset, sizeof reader->reset)) reader->reset[0] = '\0';
    return reader->scale > 0 && reader->low < reader->high ? READER_START : READER_DAMAGED;
}

static enum reader_line take_data(struct reader *reader, const char *payload) {
    struct reading reading = {0};
    int end = 0;
    if (sscanf(payload, "D %lf %ld %8[-A-Za-z]%n", &reading.seconds, &reading.counts, reading.flags, &end) != 3 ||
        payload[end]) {
        return READER_DAMAGED;
    }
    reading.value = (double)reading.counts * reader->scale;
    reading.usable = reader->scale > 0 && strpbrk(reading.flags, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == NULL;
    if (reader->scale > 0 && (reading.counts < reader->low || reading.counts > reader->high)) return READER_DAMAGED;
    reader->reading = reading;
    return READER_DATA;
}

enum reader_line reader_take(struct reader *reader, const char *line, size_t length) {
    char payload[256];
    if (!intact(line, length)) return READER_DAMAGED;
    memcpy(payload, line, length - 5);
    payload[length - 5] = '\0';
    switch (payload[0]) {
        case 'S':
            return take_start(reader, payload);
        case 'D':
            return take_data(reader, payload);
        case 'E':
            return READER_REFUSAL;
        default:
            return READER_OTHER;
    }
}

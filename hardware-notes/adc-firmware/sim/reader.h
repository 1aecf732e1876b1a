/* A reader of slugpeak-line version 1 written from PROTOCOL.md alone; it shares no code with the firmware. */
#ifndef READER_H
#define READER_H

#include <stdbool.h>
#include <stddef.h>

enum reader_line { READER_DAMAGED, READER_START, READER_DATA, READER_REFUSAL, READER_OTHER };

struct reading {
    double seconds;
    long counts;
    double value;
    char flags[9];
    bool usable; /* scaled by a start line, and no upper-case flag */
};

struct reader {
    double scale; /* 0 until the first start line */
    long low;
    long high;
    double rate;
    double window;
    double mains;
    char why[16];
    char reset[16];
    struct reading reading; /* of the last data line */
};

/* Takes one line without its line end. */
enum reader_line reader_take(struct reader *reader, const char *line, size_t length);

#endif

/* One line of text being put together, closed with its checksum. */
#ifndef LINE_H
#define LINE_H

#include <stdint.h>

#define LINE_SIZE 252

struct line {
    char text[LINE_SIZE];
    uint8_t length;
};

void line_begin(struct line *line, const char *text);
void line_text(struct line *line, const char *text);
void line_unsigned(struct line *line, uint32_t value);
void line_signed(struct line *line, int32_t value);

/* Writes value / 10^places, for example 50000 with 3 places as 50.000. */
void line_decimal(struct line *line, uint32_t value, uint8_t places);

/* Appends the checksum and the line end. */
void line_end(struct line *line);

#endif

/* No one, two or three flipped bits in a data line make another reading of it. */
#include <stdbool.h>

#include "../sim/reader.h"
#include "check.h"
#include "report.h"

static struct reader started(void) {
    struct reader reader = {.scale = 1, .low = -65536, .high = 65408};
    return reader;
}

static void check_not_another(const char *line, size_t length, const struct reading *true_reading) {
    struct reader reader = started();
    if (reader_take(&reader, line, length) != READER_DATA) return;
    CHECK(reader.reading.counts == true_reading->counts);
    CHECK(reader.reading.seconds >= true_reading->seconds && reader.reading.seconds <= true_reading->seconds);
    CHECK(strcmp(reader.reading.flags, true_reading->flags) == 0);
}

static void flip(char *line, int bit) { line[bit / 8] = (char)(line[bit / 8] ^ (1 << (bit % 8))); }

static void all_of_up_to_three(char *line, size_t length, const struct reading *true_reading) {
    int bits = (int)length * 8;
    for (int a = 0; a < bits; a++) {
        flip(line, a);
        check_not_another(line, length, true_reading);
        for (int b = a + 1; b < bits; b++) {
            flip(line, b);
            check_not_another(line, length, true_reading);
            for (int c = b + 1; c < bits; c++) {
                flip(line, c);
                check_not_another(line, length, true_reading);
                flip(line, c);
            }
            flip(line, b);
        }
        flip(line, a);
    }
}

static void in_the_line_of(struct moment moment, struct mean mean) {
    struct line line;
    struct reader reader = started();
    report_data(&line, &moment, mean, NOMINAL_ZERO_COUNTS, false);
    size_t length = line.length - 1u;
    CHECK(reader_take(&reader, line.text, length) == READER_DATA);
    struct reading true_reading = reader.reading;
    all_of_up_to_three(line.text, length, &true_reading);
}

int main(void) {
    in_the_line_of((struct moment){1, 60000}, (struct mean){NOMINAL_ZERO_COUNTS - 2364, 0});
    in_the_line_of((struct moment){7, 500000}, (struct mean){NOMINAL_ZERO_COUNTS + 9, CLIPPED_HIGH});
    PASSED();
    return 0;
}

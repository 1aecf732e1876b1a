#include "report.h"

#include "check.h"

static void decimals(uint32_t value, uint8_t places, const char *expected) {
    struct line line;
    line_begin(&line, "");
    line_decimal(&line, value, places);
    line.text[line.length] = '\0';
    CHECK_TEXT(line.text, expected);
}

static void numbers_as_text(void) {
    decimals(0, 0, "0");
    decimals(4294967295u, 0, "4294967295");
    decimals(50000, 3, "50.000");
    decimals(7, 3, "0.007");
    decimals(0, 6, "0.000000");
    decimals(620000, 6, "0.620000");
}

static void time_of(uint32_t seconds, uint32_t micros, const char *expected) {
    struct line line;
    struct moment moment = {seconds, micros};
    report_data(&line, &moment, (struct mean){0, 0}, 0, false);
    *strchr(line.text + 2, ' ') = '\0';
    CHECK_TEXT(line.text, expected);
}

static void times_have_six_decimals(void) {
    time_of(0, 0, "D 0.000000");
    time_of(1, 5, "D 1.000005");
    time_of(1, 5000, "D 1.005000");
    time_of(4294967, 999999, "D 4294967.999999");
}

/* An hour of blocks of 4166 us, added one by one, is an hour to the microsecond. */
static void time_does_not_creep(void) {
    struct moment moment = {0, 0};
    for (long block = 0; block < 864000; block++) moment_advance(&moment, 4166);
    CHECK(moment.seconds == 3599 && moment.micros == 424000);
    moment_advance(&moment, 5000000);
    CHECK(moment.seconds == 3604 && moment.micros == 424000);
}

static void flags_of(uint8_t clipped, bool gap, const char *expected) {
    struct line line;
    report_data(&line, &(struct moment){1, 0}, (struct mean){5, clipped}, 3, gap);
    *strchr(line.text, '*') = '\0';
    CHECK_TEXT(line.text, expected);
}

static void flags_are_each_a_letter(void) {
    flags_of(0, false, "D 1.000000 2 -");
    flags_of(CLIPPED_HIGH, false, "D 1.000000 2 H");
    flags_of(CLIPPED_LOW, true, "D 1.000000 2 Lg");
    flags_of(CLIPPED_LOW | CLIPPED_HIGH, true, "D 1.000000 2 HLg");
}

/* At 200 readings a second the longest data line takes 5 ms at most: 57 bytes at 115 200 baud. */
static void the_longest_data_line_fits_its_time(void) {
    struct line line;
    struct moment moment = {4294967295u, 999999};
    report_data(&line, &moment, (struct mean){0, CLIPPED_HIGH | CLIPPED_LOW}, TOP_COUNTS, true);
    CHECK(line.length <= 45);
}

static void the_longest_start_line_keeps_to_the_protocol(void) {
    struct line line;
    struct settings settings = {.mains_hz = 50, .rate = 200, .range = 2};
    report_start(&line, &settings, NOMINAL_ZERO_COUNTS, "brownout", "changed");
    CHECK(line.length <= 251);
    report_start(&line, &settings, NOMINAL_ZERO_COUNTS, "", "boot");
    line.text[line.length - 1] = '\0';
    CHECK(strstr(line.text, "reset=") == NULL);
}

static void an_overlong_text_is_cut_and_still_closed(void) {
    struct line line;
    line_begin(&line, "");
    for (int i = 0; i < 400; i++) line_text(&line, "x");
    line_end(&line);
    CHECK(line.length <= LINE_SIZE && line.text[line.length - 1] == '\n');
}

int main(void) {
    numbers_as_text();
    times_have_six_decimals();
    time_does_not_creep();
    flags_are_each_a_letter();
    the_longest_data_line_fits_its_time();
    the_longest_start_line_keeps_to_the_protocol();
    an_overlong_text_is_cut_and_still_closed();
    PASSED();
    return 0;
}

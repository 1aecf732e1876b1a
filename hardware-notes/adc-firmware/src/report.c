#include "report.h"

void moment_advance(struct moment *moment, uint32_t micros) {
    moment->micros += micros;
    while (moment->micros >= 1000000) {
        moment->micros -= 1000000;
        moment->seconds++;
    }
}

static void write_moment(struct line *line, const struct moment *moment) {
    line_unsigned(line, moment->seconds);
    line_text(line, ".");
    for (uint32_t place = 100000; place > moment->micros && place > 1; place /= 10) line_text(line, "0");
    line_unsigned(line, moment->micros);
}

static void write_timing(struct line *line, const struct settings *settings) {
    uint32_t micros = block_micros(settings);
    line_text(line, " rate=");
    line_decimal(line, 1000000000 / (micros * blocks_per_reading(settings)), 3);
    line_text(line, " window=");
    line_decimal(line, micros * blocks_per_window(settings), 6);
    line_text(line, " mains=");
    line_unsigned(line, settings->mains_hz);
}

void report_start(struct line *line, const struct settings *settings, int32_t zero_counts, const char *reset,
                  const char *why) {
    line_begin(line, "S slugpeak-line 1 name=" BOARD_NAME " fw=" FIRMWARE_VERSION " unit=" UNIT " scale=");
    line_text(line, settings->range == 1 ? SCALE_RANGE_1 : SCALE_RANGE_2);
    line_text(line, " low=");
    line_signed(line, -zero_counts);
    line_text(line, " high=");
    line_signed(line, TOP_COUNTS - zero_counts);
    write_timing(line, settings);
    line_text(line, " range=");
    line_unsigned(line, settings->range);
    line_text(line, " ranges=");
    line_unsigned(line, RANGES);
    line_text(line, " rin=" INPUT_RESISTANCE_OHMS);
    if (*reset) {
        line_text(line, " reset=");
        line_text(line, reset);
    }
    line_text(line, " why=");
    line_text(line, why);
    line_end(line);
}

void report_data(struct line *line, const struct moment *moment, struct mean mean, int32_t zero_counts, bool gap) {
    line_begin(line, "D ");
    write_moment(line, moment);
    line_text(line, " ");
    line_signed(line, mean.counts - zero_counts);
    line_text(line, " ");
    if (mean.clipped & CLIPPED_HIGH) line_text(line, "H");
    if (mean.clipped & CLIPPED_LOW) line_text(line, "L");
    if (gap) line_text(line, "g");
    if (!mean.clipped && !gap) line_text(line, "-");
    line_end(line);
}

void report_refusal(struct line *line, const char *reason) {
    line_begin(line, "E ");
    line_text(line, reason);
    line_end(line);
}

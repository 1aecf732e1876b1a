/* The examples of PROTOCOL.md are what the firmware sends and what a reader takes. */
#include "../sim/reader.h"
#include "check.h"
#include "report.h"

#define MOST_LINES 400

static char page[MOST_LINES][256];
static int lines;

static void read_page(void) {
    FILE *file = fopen("PROTOCOL.md", "r");
    CHECK(file != NULL);
    while (lines < MOST_LINES && fgets(page[lines], sizeof page[lines], file)) {
        page[lines][strcspn(page[lines], "\n")] = '\0';
        lines++;
    }
    fclose(file);
}

static int line_with(const char *text) {
    for (int i = 0; i < lines; i++) {
        if (strstr(page[i], text) == page[i]) return i;
    }
    fprintf(stderr, "PROTOCOL.md has no line that begins with: %s\n", text);
    exit(1);
}

static const char *sent(struct line *line) {
    line->text[line->length - 1] = '\0';
    return line->text;
}

static void start_lines_are_those_of_the_page(void) {
    struct line line;
    struct settings settings = DEFAULT_SETTINGS;
    report_start(&line, &settings, NOMINAL_ZERO_COUNTS, "power", "boot");
    CHECK_TEXT(sent(&line), page[line_with("S slugpeak-line 1 name=slugpeak-adc")]);
    settings.range = 2;
    settings.rate = 200;
    report_start(&line, &settings, NOMINAL_ZERO_COUNTS, "power", "changed");
    CHECK_TEXT(sent(&line), page[line_with("The host sends `range 2`") + 3]);
}

static void data_lines_are_those_of_the_page(void) {
    struct line line;
    struct moment moment = {1, 60000};
    report_data(&line, &moment, (struct mean){NOMINAL_ZERO_COUNTS - 2364, 0}, NOMINAL_ZERO_COUNTS, false);
    CHECK_TEXT(sent(&line), page[line_with("D 1.060000 -2364")]);
    moment = (struct moment){12, 345000};
    report_data(&line, &moment, (struct mean){NOMINAL_ZERO_COUNTS + 65011, CLIPPED_HIGH}, NOMINAL_ZERO_COUNTS, false);
    CHECK_TEXT(sent(&line), page[line_with("D 12.345000")]);
    report_data(&line, &(struct moment){12, 365000}, (struct mean){0, CLIPPED_LOW}, NOMINAL_ZERO_COUNTS, false);
    CHECK_TEXT(sent(&line), page[line_with("D 12.365000")]);
    report_data(&line, &(struct moment){12, 465000}, (struct mean){NOMINAL_ZERO_COUNTS + 118, 0}, NOMINAL_ZERO_COUNTS, true);
    CHECK_TEXT(sent(&line), page[line_with("D 12.465000")]);
    report_refusal(&line, "rate must be 2 to 200");
    CHECK_TEXT(sent(&line), page[line_with("E rate must be")]);
}

static void a_reader_takes_every_example_before_the_damaged_ones(void) {
    int taken = 0;
    struct reader reader = {0};
    int damaged_from = line_with("Damaged, and so not readings");
    for (int i = line_with("## Examples"); i < lines; i++) {
        if (!strchr(page[i], '*')) continue;
        enum reader_line kind = reader_take(&reader, page[i], strlen(page[i]));
        CHECK((kind == READER_DAMAGED) == (i > damaged_from));
        taken += kind != READER_DAMAGED;
    }
    CHECK(taken == 10);
}

int main(void) {
    read_page();
    start_lines_are_those_of_the_page();
    data_lines_are_those_of_the_page();
    a_reader_takes_every_example_before_the_damaged_ones();
    PASSED();
    return 0;
}

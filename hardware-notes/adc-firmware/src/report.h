/* The lines that the board sends. */
#ifndef REPORT_H
#define REPORT_H

#include <stdbool.h>

#include "average.h"
#include "line.h"
#include "settings.h"

struct moment {
    uint32_t seconds;
    uint32_t micros; /* below 1 000 000 */
};

void moment_advance(struct moment *moment, uint32_t micros);

/* The cause of the last reset, or an empty text where the board cannot know it. */
void report_start(struct line *line, const struct settings *settings, int32_t zero_counts, const char *reset,
                  const char *why);

void report_data(struct line *line, const struct moment *moment, struct mean mean, int32_t zero_counts, bool gap);

void report_refusal(struct line *line, const char *reason);

#endif

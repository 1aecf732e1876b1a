/* A simulated chip being listened to: every line decoded, readings kept, line errors put in on the way if wished. */
#ifndef SESSION_H
#define SESSION_H

#include "chip.h"
#include "reader.h"

#define MOST_READINGS 8192
#define RECENT_LINES 8

struct session {
    struct board_model model;
    struct chip *chip;
    double now;
    struct reader reader;
    struct reading readings[MOST_READINGS];
    double arrived[MOST_READINGS]; /* chip time at which the line was complete */
    int count;
    int starts;
    int after_change; /* index of the first reading after the last start line that told of a change */
    int refusals;
    int damaged;
    int wrong; /* lines believed that the board never sent */
    double flips_per_byte; /* chance that a byte arrives with one bit wrong */
    long flipped;
    char line[256];
    int length;
    struct {
        char text[256];
        int length;
    } sent[RECENT_LINES]; /* the lines as they were before errors were put in */
    int sent_now;
};

/* Input: volts at the probe tip at a time. The model's noise and dither are set before. */
void session_power_on(struct session *session, const char *elf, double (*volts)(const void *, double), const void *input);

void session_run(struct session *session, double seconds);

/* Sends a command and runs until its answer must have come (half a second). */
void session_command(struct session *session, const char *command);

/* Forgets the readings and counts so far. */
void session_forget(struct session *session);

#endif

#include "session.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static int was_sent(const struct session *session) {
    for (int i = 0; i < RECENT_LINES; i++) {
        if (session->sent[i].length == session->length &&
            memcmp(session->sent[i].text, session->line, (size_t)session->length) == 0) {
            return 1;
        }
    }
    return 0;
}

static void remember_sent(struct session *session, uint8_t byte) {
    int now = session->sent_now;
    if (byte == '\n') {
        session->sent_now = (now + 1) % RECENT_LINES;
        session->sent[session->sent_now].length = 0;
    } else if (session->sent[now].length < (int)sizeof session->sent[now].text) {
        session->sent[now].text[session->sent[now].length++] = (char)byte;
    }
}

static void take_line(struct session *session) {
    if (session->length == 0) return;
    enum reader_line kind = reader_take(&session->reader, session->line, (size_t)session->length);
    if (kind != READER_DAMAGED) session->wrong += !was_sent(session);
    switch (kind) {
        case READER_DATA:
            if (session->count < MOST_READINGS) {
                session->arrived[session->count] = session->now;
                session->readings[session->count++] = session->reader.reading;
            }
            break;
        case READER_START:
            session->starts++;
            if (strcmp(session->reader.why, "changed") == 0) session->after_change = session->count;
            break;
        case READER_REFUSAL:
            session->refusals++;
            break;
        case READER_DAMAGED:
        case READER_OTHER:
            session->damaged++;
            break;
    }
}

static uint8_t perhaps_flipped(struct session *session, uint8_t byte) {
    if (session->flips_per_byte <= 0) return byte;
    if ((double)random() / RAND_MAX >= session->flips_per_byte) return byte;
    session->flipped++;
    return byte ^ (uint8_t)(1 << (random() % 8));
}

static void on_byte(void *receiver, uint8_t sent) {
    struct session *session = receiver;
    uint8_t byte = perhaps_flipped(session, sent);
    remember_sent(session, sent);
    session->now = chip_seconds(session->chip);
    if (byte == '\n') {
        take_line(session);
        session->length = 0;
    } else if (session->length < (int)sizeof session->line) {
        session->line[session->length++] = (char)byte;
    }
}

void session_power_on(struct session *session, const char *elf, double (*volts)(const void *, double),
                      const void *input) {
    session->model.volts = volts;
    session->model.input = input;
    board_model_begin(&session->model, 20260101);
    session->chip = chip_power_on(elf, &session->model, on_byte, session);
    if (!session->chip) exit(1);
}

void session_run(struct session *session, double seconds) {
    if (!chip_run_until(session->chip, chip_seconds(session->chip) + seconds)) {
        fputs("the simulated program crashed\n", stderr);
        exit(1);
    }
}

void session_command(struct session *session, const char *command) {
    chip_receive(session->chip, command, strlen(command));
    chip_receive(session->chip, "\n", 1);
    session_run(session, 0.5);
}

void session_forget(struct session *session) {
    session->count = session->starts = session->refusals = session->damaged = session->wrong = 0;
    session->flipped = 0;
}

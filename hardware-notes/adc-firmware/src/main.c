/* slugpeak-adc: reads the probe, averages over whole mains periods, sends slugpeak-line version 1 (PROTOCOL.md). */
#include <avr/interrupt.h>
#include <avr/sleep.h>
#include <avr/wdt.h>
#include <stddef.h>

#include "average.h"
#include "board.h"
#include "command.h"
#include "report.h"
#include "reset_cause.h"
#include "sampler.h"
#include "settings.h"
#include "store.h"
#include "uart.h"
#include "zeroing.h"

static struct settings settings = DEFAULT_SETTINGS;
static struct average average;
static struct zeroing zeroing;
static struct moment now;
static struct line line;
static int32_t zero_counts;
static uint8_t setup;         /* the blocks to use are those taken under this set-up */
static bool gap;              /* a data line could not be sent */
static const char *why;       /* start line to be sent as soon as there is room, or NULL */
static const char *reason;    /* refusal to be sent as soon as there is room, or NULL */
static bool unannounced;      /* readings wait until a start line has told of new settings */
static uint32_t repeat_at;    /* seconds */

static void begin_window(void) { average_begin(&average, blocks_per_window(&settings), blocks_per_reading(&settings)); }

static void settings_changed(void) {
    zeroing_stop(&zeroing);
    zero_counts = store_read_zero(settings.range);
    setup = sampler_set(&settings);
    begin_window();
    why = "changed";
    unannounced = true;
}

static void send_answers(void) {
    if (reason) {
        report_refusal(&line, reason);
        if (uart_send(&line)) reason = NULL;
    }
    if (why) {
        report_start(&line, &settings, zero_counts, reset_cause(), why);
        if (!uart_send(&line)) return;
        why = NULL;
        unannounced = false;
        repeat_at = now.seconds + SECONDS_BETWEEN_START_LINES;
    }
}

static void send_reading(struct mean mean) {
    report_data(&line, &now, mean, zero_counts, gap);
    gap = !uart_send(&line);
}

static bool finish_zeroing(void) {
    int32_t found;
    bool good = zeroing_result(&zeroing, &found);
    zeroing_stop(&zeroing);
    if (good) {
        store_write_zero(settings.range, found);
        settings_changed();
    } else {
        reason = "zero refused; the input is not near zero";
    }
    return good;
}

static void on_block(const struct sampled *sampled) {
    struct mean mean;
    moment_advance(&now, (uint32_t)block_micros(&settings) * (sampled->lost + 1u));
    if (sampled->setup != setup || now.seconds < SETTLING_SECONDS) return;
    if (sampled->lost) {
        gap = true;
        begin_window();
    }
    if (zeroing_add(&zeroing, sampled->block) && finish_zeroing()) return; /* the block is of the settings before */
    if (average_add(&average, sampled->block, &mean) && !unannounced) send_reading(mean);
    if (!why && now.seconds >= repeat_at) why = "repeat";
}

static void on_command(const char *text) {
    struct command command = command_parse(text);
    switch (command.kind) {
        case COMMAND_NOTHING:
            return;
        case COMMAND_ASK:
            if (!why) why = "asked";
            return;
        case COMMAND_RATE:
            settings.rate = command.value;
            break;
        case COMMAND_MAINS:
            settings.mains_hz = command.value;
            store_write_mains(command.value);
            break;
        case COMMAND_RANGE:
            settings.range = command.value;
            break;
        case COMMAND_ZERO:
            zeroing_begin(&zeroing, settings.mains_hz);
            return;
        case COMMAND_REFUSED:
            reason = command.reason;
            return;
    }
    settings_changed();
}

static void poll_commands(void) {
    char text[LONGEST_COMMAND + 1];
    if (why || reason) return; /* one answer for each command */
    switch (uart_take(text)) {
        case UART_NOTHING:
            return;
        case UART_COMMAND:
            on_command(text);
            return;
        case UART_TOO_LONG:
            reason = "command too long";
            return;
    }
}

/* The reset may have cut a line short; the start line must not be taken for the rest of it. */
static void close_cut_line(void) {
    line_begin(&line, "\n");
    uart_send(&line);
}

int main(void) {
    struct sampled sampled;
    uart_start();
    close_cut_line();
    settings.mains_hz = store_read_mains();
    sampler_start(&settings);
    settings_changed();
    why = "boot";
    wdt_enable(WDTO_500MS);
    sei();
    for (;;) {
        /* Only fresh samples keep the watchdog quiet: a converter or timer that stopped is a fault too. */
        while (sampler_take(&sampled)) {
            wdt_reset();
            on_block(&sampled);
        }
        poll_commands();
        send_answers();
        sleep_mode();
    }
}

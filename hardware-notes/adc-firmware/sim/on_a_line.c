/*
 * Puts the simulated board on a serial line of this computer: a pseudo-terminal with a link of your choice, in real time.
 * Opening the line resets the board, as the DTR line does, and the slug story begins anew; or a steady voltage is fed, with
 * hum if wished. Each data line that went out is written to a file, with the voltage that was at the probe tip.
 */
#define _GNU_SOURCE
#include <errno.h>
#include <fcntl.h>
#include <getopt.h>
#include <math.h>
#include <poll.h>
#include <signal.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <termios.h>
#include <time.h>
#include <unistd.h>

#include "chip.h"
#include "slug.h"

#define NOISE_CODES 0.3
#define FLIPS_FROM_SECONDS 2.0 /* the first start line comes through whole */
#define STEP_MICROS 2000
#define WINDOW_SECONDS 0.02
#define HUM_HZ 50.02 /* mains is never exact */

static struct {
    const char *elf;
    const char *link;
    double seconds;         /* of the story; then the board is unplugged */
    double flips_per_byte;
    bool steady;
    double steady_volts;
    double hum_volts; /* rms */
    FILE *sent;
} options = {.seconds = 14};

static struct {
    int master;
    bool open;
    double reset_at; /* chip time of the last reset */
    char line[256];
    size_t length;
    bool touched;       /* a bit of this line was flipped, or of the line end before it */
    bool end_touched;
} wire;

static struct chip *chip;
static volatile sig_atomic_t stop;

static void on_signal(int signal_number) {
    (void)signal_number;
    stop = 1;
}

static double story_seconds(void) { return chip_seconds(chip) - wire.reset_at; }

/* Without the hum, which is no part of what should be read. */
static double fed_volts(double seconds) { return options.steady ? options.steady_volts : slug_volts(seconds); }

static double volts_at_tip(const void *input, double seconds) {
    (void)input;
    return fed_volts(seconds - wire.reset_at) + options.hum_volts * M_SQRT2 * sin(2 * M_PI * HUM_HZ * seconds);
}

static double mean_fed(double until) {
    double sum = 0;
    for (int i = 0; i < 100; i++) sum += fed_volts(until - WINDOW_SECONDS * (i + 0.5) / 100);
    return sum / 100;
}

static void record_line(bool clean) {
    double seconds;
    long counts;
    char flags[9];
    wire.line[wire.length < sizeof wire.line ? wire.length : sizeof wire.line - 1] = '\0';
    if (!options.sent || sscanf(wire.line, "D %lf %ld %8[^*]", &seconds, &counts, flags) != 3) return;
    fprintf(options.sent, "%.6f,%ld,%s,%.6f,%d\n", seconds, counts, flags, mean_fed(seconds), clean);
    fflush(options.sent);
}

static uint8_t perhaps_flipped(uint8_t byte) {
    if (story_seconds() < FLIPS_FROM_SECONDS || (double)random() / RAND_MAX >= options.flips_per_byte) return byte;
    return byte ^ (uint8_t)(1 << (random() % 8));
}

static void on_byte(void *receiver, uint8_t sent) {
    (void)receiver;
    if (!wire.open) return;
    uint8_t byte = perhaps_flipped(sent);
    if (byte != sent) wire.touched = true;
    if (write(wire.master, &byte, 1) != 1) wire.touched = true;
    if (sent != '\n') {
        if (wire.length < sizeof wire.line - 1) wire.line[wire.length++] = (char)sent;
        return;
    }
    record_line(!wire.touched && !wire.end_touched);
    wire.end_touched = byte != sent;
    wire.touched = false;
    wire.length = 0;
}

static int open_line(void) {
    struct termios settings;
    int master = posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK);
    if (master < 0 || grantpt(master) != 0 || unlockpt(master) != 0) return -1;
    int slave = open(ptsname(master), O_RDWR | O_NOCTTY);
    if (slave < 0 || tcgetattr(slave, &settings) != 0) return -1;
    cfmakeraw(&settings);
    tcsetattr(slave, TCSANOW, &settings);
    close(slave); /* from now on a hang-up shows that nobody has the line open */
    unlink(options.link);
    return symlink(ptsname(master), options.link) == 0 ? master : -1;
}

static void watch_line(void) {
    char bytes[256];
    struct pollfd line = {.fd = wire.master, .events = POLLIN};
    poll(&line, 1, 0);
    bool open_now = !(line.revents & POLLHUP);
    if (open_now && !wire.open) {
        chip_reset_pin(chip);
        wire.reset_at = chip_seconds(chip);
        wire.length = 0;
        wire.touched = wire.end_touched = false;
        if (options.sent && ftruncate(fileno(options.sent), 0) == 0) rewind(options.sent);
        srandom(6);
    }
    wire.open = open_now;
    ssize_t count = open_now && (line.revents & POLLIN) ? read(wire.master, bytes, sizeof bytes) : 0;
    if (count > 0) chip_receive(chip, bytes, (size_t)count);
}

static double clock_seconds(void) {
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (double)now.tv_sec + (double)now.tv_nsec * 1e-9;
}

static void run(void) {
    double begun = clock_seconds();
    bool told = false;
    while (!stop && !(told && story_seconds() > options.seconds)) {
        watch_line();
        told = told || wire.open;
        if (!chip_run_until(chip, clock_seconds() - begun)) exit(1);
        usleep(STEP_MICROS);
    }
}

static void read_options(int count, char **arguments) {
    int option;
    while ((option = getopt(count, arguments, "l:t:f:v:h:o:")) != -1) {
        if (option == 'l') options.link = optarg;
        if (option == 't') options.seconds = atof(optarg);
        if (option == 'f') options.flips_per_byte = atof(optarg);
        if (option == 'v') options.steady = true, options.steady_volts = atof(optarg);
        if (option == 'h') options.hum_volts = atof(optarg);
        if (option == 'o') options.sent = fopen(optarg, "w");
    }
    if (optind == count - 1 && options.link) {
        options.elf = arguments[optind];
        return;
    }
    fputs("usage: on-a-line -l LINK [-t SECONDS] [-f FLIPS_PER_BYTE] [-v STEADY_VOLTS] [-h HUM_RMS_VOLTS] [-o SENT.csv] FIRMWARE.elf\n", stderr);
    exit(2);
}

int main(int count, char **arguments) {
    struct board_model model = {.volts = volts_at_tip, .noise_codes = NOISE_CODES, .dither_fitted = true};
    read_options(count, arguments);
    board_model_begin(&model, 7);
    signal(SIGTERM, on_signal);
    signal(SIGINT, on_signal);
    wire.master = open_line();
    if (wire.master < 0) {
        fprintf(stderr, "cannot make the line %s: %s\n", options.link, strerror(errno));
        return 1;
    }
    chip = chip_power_on(options.elf, &model, on_byte, NULL);
    if (!chip) return 1;
    run();
    unlink(options.link);
    return 0;
}

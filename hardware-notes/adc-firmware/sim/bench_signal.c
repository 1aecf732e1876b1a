/* How well the firmware reads: resolution, truth, noise, timing, hum. */
#include <math.h>
#include <stdio.h>

#include "bench.h"

#define VOLTS_PER_CODE_RANGE_1 (5.0 / 1024 * 12)

static double rms_about(const struct session *session, double centre) {
    double sum = 0;
    for (int i = 0; i < session->count; i++) sum += pow(session->readings[i].value - centre, 2);
    return sqrt(sum / session->count);
}

/* Standard deviation about the straight line of least squares. */
static double scatter(const struct session *session) {
    double n = session->count, t = 0, v = 0, tt = 0, tv = 0, vv = 0;
    for (int i = 0; i < session->count; i++) {
        double x = session->readings[i].seconds - session->readings[0].seconds;
        double y = session->readings[i].value - session->readings[0].value;
        t += x, v += y, tt += x * x, tv += x * y, vv += y * y;
    }
    double stt = tt - t * t / n, stv = tv - t * v / n, svv = vv - v * v / n;
    return sqrt(fmax(0, svv - stv * stv / stt) / (n - 2));
}

/* An ideal converter of N bits has a quantisation error of span / 2^N / sqrt 12 rms. */
static double effective_bits(double rms_volts) { return log2(1024 * VOLTS_PER_CODE_RANGE_1 / (rms_volts * sqrt(12))); }

/* A ramp over 8 codes: what the converter's steps do must show as error. */
static double bits_on_ramp(int rate, double noise_codes, bool dither) {
    char command[16];
    double seconds = fmax(6, 60.0 / rate);
    struct input input = {.volts = -1.0, .volts_per_second = -8 * VOLTS_PER_CODE_RANGE_1 / seconds};
    struct session *session = power_on(noise_codes, dither, &input);
    snprintf(command, sizeof command, "rate %d", rate);
    session_command(session, command);
    session_forget(session);
    session_run(session, seconds);
    double bits = effective_bits(scatter(session));
    power_off(session);
    return bits;
}

static void resolution(void) {
    report("effective bits, 200 readings/s, dither fitted", bits_on_ramp(200, USUAL_NOISE, true), "bit", ">=", 12.5);
    report("effective bits, 50 readings/s, dither fitted", bits_on_ramp(50, USUAL_NOISE, true), "bit", ">=", 12.5);
    report("effective bits, 10 readings/s, dither fitted", bits_on_ramp(10, USUAL_NOISE, true), "bit", ">=", 13.5);
    report("effective bits, 2 readings/s, dither fitted", bits_on_ramp(2, USUAL_NOISE, true), "bit", ">=", 14);
    report("effective bits, 50/s, dither fitted, supply noise 1 code", bits_on_ramp(50, 1.0, true), "bit", ">=", 11.3);
    report("effective bits, 50/s, no dither, noise 0.5 code", bits_on_ramp(50, 0.5, false), "bit", ">=", 11);
    report("effective bits, 50/s, no dither, noise 0.1 code", bits_on_ramp(50, 0.1, false), "bit", "<=", 11);
    report("effective bits, 10/s, no dither, noise 0.1 code", bits_on_ramp(10, 0.1, false), "bit", "<=", 11);
}

static void accuracy(void) {
    static const double fed[] = {-25, -12, -5, -1, -0.2, 0, 0.2, 1, 5, 12, 25};
    double worst = 0;
    for (size_t i = 0; i < sizeof fed / sizeof *fed; i++) {
        struct input input = {.volts = fed[i]};
        struct session *session = power_on(USUAL_NOISE, true, &input);
        session_forget(session);
        session_run(session, 1);
        worst = fmax(worst, fabs(mean_of(session) - fed[i]));
        power_off(session);
    }
    report("largest error from -25 V to 25 V, range 1", worst * 1e3, "mV", "<=", 60);
}

static void noise_at_rest(void) {
    struct input input = {.volts = -1.0};
    struct session *session = power_on(USUAL_NOISE, true, &input);
    session_forget(session);
    session_run(session, 6);
    report("noise at -1 V, 50 readings/s, range 1", rms_about(session, mean_of(session)) * 1e3, "mV rms", "<=", 3);
    session_command(session, "range 2");
    session_forget(session);
    session_run(session, 6);
    report("noise at -1 V, 50 readings/s, range 2", rms_about(session, mean_of(session)) * 1e3, "mV rms", "<=", 0.6);
    report("largest error at -1 V, range 2", fabs(mean_of(session) + 1) * 1e3, "mV", "<=", 12);
    power_off(session);
}

static void timing(int rate, const char *mains) {
    char what[80], command[16];
    struct input input = {.volts = -1.0};
    struct session *session = power_on(USUAL_NOISE, true, &input);
    session_command(session, mains);
    snprintf(command, sizeof command, "rate %d", rate);
    session_command(session, command);
    session_forget(session);
    session_run(session, 12);
    double span = session->readings[session->count - 1].seconds - session->readings[0].seconds;
    double interval = span / (session->count - 1), stamps = 0, arrivals = 0;
    for (int i = 1; i < session->count; i++) {
        double step = session->readings[i].seconds - session->readings[i - 1].seconds;
        stamps = fmax(stamps, fabs(step - interval));
        arrivals = fmax(arrivals, fabs(session->arrived[i] - session->arrived[i - 1] - interval));
    }
    snprintf(what, sizeof what, "rate, asked %d at %s: measured against stated", rate, mains);
    report(what, fabs(1 / interval / session->reader.rate - 1) * 1e6, "ppm", "<=", 10);
    report("  time stamp jitter", round(stamps * 1e9) / 1e3, "us", "<=", 1);
    report("  arrival jitter, start lines between", arrivals * 1e3, "ms", "<=", 20);
    report("  readings missing", fmax(0, floor(12 / interval) - session->count), "in 12 s", "<=", 0);
    report("  lines damaged", session->damaged, "", "<=", 0);
    power_off(session);
}

/* Hum of 20 V peak on top of -1 V against what of it is left in the readings. */
static double rejection_db(const char *mains, double hum_hz) {
    struct input input = {.volts = -1.0};
    struct session *session = power_on(USUAL_NOISE, true, &input);
    session_command(session, mains);
    session_command(session, "rate 200");
    session_forget(session);
    session_run(session, 5);
    double quiet = mean_of(session);
    input.hum_volts = 20;
    input.hum_hz = hum_hz;
    session_run(session, 0.5);
    session_forget(session);
    session_run(session, 5);
    double left = rms_about(session, quiet);
    power_off(session);
    return 20 * log10(20 / sqrt(2) / left);
}

static void mains_rejection(void) {
    report("mains rejection, mains 50, hum 50 Hz", rejection_db("mains 50", 50), "dB", ">=", 55);
    report("mains rejection, mains 50, hum 100 Hz", rejection_db("mains 50", 100), "dB", ">=", 55);
    report("mains rejection, mains 50, hum 50.2 Hz", rejection_db("mains 50", 50.2), "dB", ">=", 45);
    report("mains rejection, mains 50, hum 49.5 Hz", rejection_db("mains 50", 49.5), "dB", ">=", 38);
    report("mains rejection, mains 60, hum 60 Hz", rejection_db("mains 60", 60), "dB", ">=", 55);
    report("mains rejection, mains 60, hum 120 Hz", rejection_db("mains 60", 120), "dB", ">=", 55);
    report("mains set to 50, hum 60 Hz (the wrong setting)", rejection_db("mains 50", 60), "dB", "<=", 20);
}

void measure_the_signal(void) {
    resolution();
    accuracy();
    noise_at_rest();
    timing(2, "mains 50");
    timing(50, "mains 50");
    timing(200, "mains 50");
    timing(200, "mains 60");
    mains_rejection();
}

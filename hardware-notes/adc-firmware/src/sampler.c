#include "sampler.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <util/atomic.h>

#include "board.h"

#define WAITING_BLOCKS 8 /* 40 ms, longer than the main loop is ever away (storing the zero takes 20 ms) */
#define DITHER_PIN PB1

/* Reference: the supply, so that the zero point, which comes from the supply too, stays where it is. */
#define REFERENCE _BV(REFS0)

/* 16 MHz / 128 = 125 kHz: a conversion takes 104 us and is over before the next sample at 130 us or later. */
#define CONVERTER_ON (_BV(ADEN) | _BV(ADPS2) | _BV(ADPS1) | _BV(ADPS0))

static struct sampled waiting[WAITING_BLOCKS];
static uint8_t written;
static uint8_t fetched;

static struct {
    uint8_t channel;
    uint16_t ticks;
    uint8_t setup;
} wanted;

static struct sampled current; /* touched by the interrupt only */
static uint8_t samples;
static uint8_t quarter;

static void apply_wanted(void) {
    ADMUX = REFERENCE | wanted.channel;
    OCR1A = wanted.ticks - 1;
    current.setup = wanted.setup;
}

static void hand_over(void) {
    if ((uint8_t)(written - fetched) < WAITING_BLOCKS) {
        waiting[written % WAITING_BLOCKS] = current;
        written++;
        current.lost = 0;
    } else if (current.lost < UINT8_MAX) {
        current.lost++;
    }
    current.block.sum = 0;
    current.block.clipped = 0;
}

/* The dither pin is a square wave of the mains period, which averages out over each window. */
static void dither(void) {
    quarter = (quarter + 1) % BLOCKS_PER_PERIOD;
    if (quarter < BLOCKS_PER_PERIOD / 2) {
        PORTB |= _BV(DITHER_PIN);
    } else {
        PORTB &= (uint8_t)~_BV(DITHER_PIN);
    }
}

/* Reads the sample started one tick ago and starts the next; the input is chosen between the two. */
ISR(TIMER1_COMPA_vect) {
    uint16_t code = ADC;
    bool complete = ++samples == SAMPLES_PER_BLOCK;
    block_add(&current.block, code);
    if (complete) {
        samples = 0;
        hand_over();
        apply_wanted();
    }
    ADCSRA |= _BV(ADSC);
    if (complete) dither();
}

uint8_t sampler_set(const struct settings *settings) {
    uint8_t setup;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        wanted.channel = settings->range - 1; /* range 1 on ADC0, range 2 on ADC1 */
        wanted.ticks = settings->mains_hz == 60 ? TICKS_PER_SAMPLE_60HZ : TICKS_PER_SAMPLE_50HZ;
        setup = ++wanted.setup;
    }
    return setup;
}

void sampler_start(const struct settings *settings) {
    DDRB |= _BV(DITHER_PIN);
    DIDR0 = _BV(ADC0D) | _BV(ADC1D);
    sampler_set(settings);
    apply_wanted();
    ADCSRA = CONVERTER_ON | _BV(ADSC);
    loop_until_bit_is_clear(ADCSRA, ADSC); /* the first conversion is the long one */
    TCCR1A = 0;
    TCCR1B = _BV(WGM12) | _BV(CS10);
    TIMSK1 = _BV(OCIE1A);
}

bool sampler_take(struct sampled *sampled) {
    bool any = false;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        if (written != fetched) {
            *sampled = waiting[fetched % WAITING_BLOCKS];
            fetched++;
            any = true;
        }
    }
    return any;
}

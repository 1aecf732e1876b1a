/* What this firmware knows of the board and the probe in front of it. Change a value here and rebuild. */
#ifndef BOARD_H
#define BOARD_H

#define BOARD_NAME "slugpeak-adc"
#define FIRMWARE_VERSION "1.0.0"

/* The mean of one mains period is sent as the sum of its samples: 10-bit codes x 128. */
#define SAMPLES_PER_BLOCK 32
#define BLOCKS_PER_PERIOD 4
#define SAMPLES_PER_PERIOD (SAMPLES_PER_BLOCK * BLOCKS_PER_PERIOD)
#define TOP_CODE 1023
#define TOP_COUNTS ((int32_t)TOP_CODE * SAMPLES_PER_PERIOD)

/* The probe puts zero input at half the reference. */
#define NOMINAL_ZERO_COUNTS ((int32_t)512 * SAMPLES_PER_PERIOD)

/* A zero farther off than 5 % of the span is an input that was not at zero. */
#define LARGEST_ZERO_SHIFT (NOMINAL_ZERO_COUNTS / 10)

/* The buffer amplifier stops short of its supply rails; codes this near to the ends are over-range. */
#define LOWEST_GOOD_CODE 8
#define HIGHEST_GOOD_CODE 1015

/* Timer ticks at 16 MHz from sample to sample, and the duration of one block, which comes out in whole microseconds. */
#define TICKS_PER_SAMPLE_50HZ 2500
#define TICKS_PER_SAMPLE_60HZ 2083
#define BLOCK_MICROS_50HZ 5000
#define BLOCK_MICROS_60HZ 4166

/* Volts at the probe tip for one count, with a 5 V reference: 5 V / (1024 x 128) x 12, and a fifth of that on range 2. */
#define RANGES 2
#define SCALE_RANGE_1 "4.5776e-04"
#define SCALE_RANGE_2 "9.1553e-05"
#define UNIT "V"
#define INPUT_RESISTANCE_OHMS "1.08e+07"

/* After a reset the dither network of the probe (time constant 22 ms) charges before the first reading. */
#define SETTLING_SECONDS 1

#define SLOWEST_RATE 2
#define FASTEST_RATE 200
#define SECONDS_BETWEEN_START_LINES 5

#endif

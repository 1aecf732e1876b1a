/* What is kept when the power is off: the zero of each range, and the mains frequency. */
#ifndef STORE_H
#define STORE_H

#include <stdint.h>

/* The stored counts at zero input of a range, or the nominal ones where none that make sense are stored. */
int32_t store_read_zero(uint8_t range);

void store_write_zero(uint8_t range, int32_t zero_counts);

/* The stored mains frequency, or 50 where none is stored. */
uint8_t store_read_mains(void);

void store_write_mains(uint8_t mains_hz);

#endif

/* The counts at zero input of each range, kept when the power is off. */
#ifndef ZERO_STORE_H
#define ZERO_STORE_H

#include <stdint.h>

/* The stored zero of a range, or the nominal one where none that makes sense is stored. */
int32_t zero_store_read(uint8_t range);

void zero_store_write(uint8_t range, int32_t zero_counts);

#endif

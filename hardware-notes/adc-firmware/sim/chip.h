/* The firmware on a simulated ATmega328P, wired to a board model. Time is the chip's own. */
#ifndef CHIP_H
#define CHIP_H

#include <stddef.h>
#include <stdint.h>

#include "board_model.h"

struct chip;

typedef void (*chip_sent)(void *receiver, uint8_t byte);

/* NULL with a message on standard error when the firmware cannot be read. */
struct chip *chip_power_on(const char *elf, struct board_model *model, chip_sent sent, void *receiver);

/* Runs to this time since power on; false when the program crashed. */
int chip_run_until(struct chip *chip, double seconds);

/* Time since power on. */
double chip_seconds(const struct chip *chip);

/* Bytes from the host; they arrive one by one at the speed of the line. */
void chip_receive(struct chip *chip, const char *bytes, size_t count);

/* Pulls the reset pin, as opening the port does through the DTR line. */
void chip_reset_pin(struct chip *chip);

/* A fault: the sampling interrupt stops coming. */
void chip_break_sampling(struct chip *chip);

void chip_power_off(struct chip *chip);

#endif

/* The serial line: whole lines out, never waiting; commands in. */
#ifndef UART_H
#define UART_H

#include <stdbool.h>

#include "command.h"
#include "line.h"

void uart_start(void);

/* Queues the whole line, or nothing of it when there is no room now. */
bool uart_send(const struct line *line);

enum uart_input { UART_NOTHING, UART_COMMAND, UART_TOO_LONG };

/* The next command that has come in, as a text without its line end. */
enum uart_input uart_take(char text[LONGEST_COMMAND + 1]);

#endif

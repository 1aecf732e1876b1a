#include "uart.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <string.h>
#include <util/atomic.h>

#define DIVISOR_115200 16 /* 16 MHz / (8 x 17) = 117 647, 2.1 % fast, within what a receiver takes */

static char outgoing[256];
static volatile uint8_t out_head;
static volatile uint8_t out_tail;

static char incoming[LONGEST_COMMAND + 1];
static uint8_t in_length;
static bool in_ready;
static bool in_too_long;

void uart_start(void) {
    UCSR0A = _BV(U2X0);
    UBRR0 = DIVISOR_115200;
    UCSR0C = _BV(UCSZ01) | _BV(UCSZ00);
    UCSR0B = _BV(RXEN0) | _BV(TXEN0) | _BV(RXCIE0);
}

bool uart_send(const struct line *line) {
    uint8_t head = out_head;
    uint8_t room = (uint8_t)(out_tail - head - 1);
    if (line->length > room) return false;
    for (uint8_t i = 0; i < line->length; i++) outgoing[head++] = line->text[i];
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        out_head = head;
        UCSR0B |= _BV(UDRIE0);
    }
    return true;
}

ISR(USART_UDRE_vect) {
    uint8_t tail = out_tail;
    if (tail == out_head) {
        UCSR0B &= (uint8_t)~_BV(UDRIE0);
        return;
    }
    UDR0 = (uint8_t)outgoing[tail];
    out_tail = (uint8_t)(tail + 1);
}

/* A command that comes before the last one was fetched is dropped; the host sees no answer to it. */
ISR(USART_RX_vect) {
    char c = (char)UDR0;
    if (in_ready) return;
    if (c == '\n' || c == '\r') {
        in_ready = in_length > 0 || in_too_long;
    } else if (in_length < LONGEST_COMMAND) {
        incoming[in_length++] = c;
    } else {
        in_too_long = true;
    }
}

enum uart_input uart_take(char text[LONGEST_COMMAND + 1]) {
    enum uart_input input = UART_NOTHING;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        if (in_ready) {
            input = in_too_long ? UART_TOO_LONG : UART_COMMAND;
            memcpy(text, incoming, in_length);
            text[in_length] = '\0';
            in_length = 0;
            in_too_long = in_ready = false;
        }
    }
    return input;
}

#include "chip.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <avr_adc.h>
#include <avr_ioport.h>
#include <avr_uart.h>
#include <sim_avr.h>
#include <sim_elf.h>

#define CLOCK_HZ 16000000
#define SUPPLY_MILLIVOLTS 5000
#define TOP_CODE_OF_SIMULATOR 1023
#define DITHER_PIN 1
#define TIMSK1_ADDRESS 0x6F
#define MCUSR_ADDRESS 0x54
#define POWER_ON_FLAG 0x01
#define EXTERNAL_RESET_FLAG 0x02
#define RECEIVE_QUEUE 4096
#define BYTE_SECONDS (10.0 / 115200)

struct chip {
    avr_t *avr;
    avr_irq_t *adc;
    avr_irq_t *uart_input;
    struct board_model *model;
    chip_sent sent;
    void *receiver;
    double before_reset_seconds; /* the simulator's clock starts again at each reset */
    uint8_t queue[RECEIVE_QUEUE];
    size_t queued;
    double next_byte_seconds;
};

double chip_seconds(const struct chip *chip) {
    return chip->before_reset_seconds + (double)chip->avr->cycle / CLOCK_HZ;
}

/* The simulator converts whole millivolts; the middle of a code's span gives exactly the model's code. */
static void on_conversion(struct avr_irq_t *irq, uint32_t value, void *param) {
    struct chip *chip = param;
    union {
        avr_adc_mux_t mux;
        uint32_t value;
    } trigger = {.value = value};
    (void)irq;
    int channel = trigger.mux.src;
    double code = board_model_code(chip->model, channel, chip_seconds(chip));
    avr_raise_irq(chip->adc + channel, (uint32_t)((code + 0.5) * SUPPLY_MILLIVOLTS / TOP_CODE_OF_SIMULATOR));
}

static void on_dither_pin(struct avr_irq_t *irq, uint32_t value, void *param) {
    (void)irq;
    ((struct chip *)param)->model->dither_pin_high = value != 0;
}

static void on_sent(struct avr_irq_t *irq, uint32_t value, void *param) {
    struct chip *chip = param;
    (void)irq;
    chip->sent(chip->receiver, (uint8_t)value);
}

/* One byte of the host's, when its time on the line is over. */
static void deliver(struct chip *chip) {
    if (chip->queued == 0 || chip_seconds(chip) < chip->next_byte_seconds) return;
    avr_raise_irq(chip->uart_input, chip->queue[0]);
    memmove(chip->queue, chip->queue + 1, --chip->queued);
    chip->next_byte_seconds = chip_seconds(chip) + BYTE_SECONDS;
}

static void silent_log(struct avr_t *avr, const int level, const char *format, va_list arguments) {
    (void)avr;
    if (level <= LOG_ERROR) vfprintf(stderr, format, arguments);
}

/* With a POSIX sleep the simulator would wait in real time while the chip idles. */
static void no_sleep(avr_t *avr, avr_cycle_count_t cycles) {
    (void)avr;
    (void)cycles;
}

static void wire(struct chip *chip) {
    avr_t *avr = chip->avr;
    uint32_t no_flags = 0;
    avr_ioctl(avr, AVR_IOCTL_UART_SET_FLAGS('0'), &no_flags);
    chip->adc = avr_io_getirq(avr, AVR_IOCTL_ADC_GETIRQ, 0);
    chip->uart_input = avr_io_getirq(avr, AVR_IOCTL_UART_GETIRQ('0'), UART_IRQ_INPUT);
    avr_irq_register_notify(chip->adc + ADC_IRQ_OUT_TRIGGER, on_conversion, chip);
    avr_irq_register_notify(avr_io_getirq(avr, AVR_IOCTL_IOPORT_GETIRQ('B'), DITHER_PIN), on_dither_pin, chip);
    avr_irq_register_notify(avr_io_getirq(avr, AVR_IOCTL_UART_GETIRQ('0'), UART_IRQ_OUTPUT), on_sent, chip);
}

struct chip *chip_power_on(const char *elf, struct board_model *model, chip_sent sent, void *receiver) {
    static elf_firmware_t firmware; /* the simulator keeps pointers into it */
    struct chip *chip = calloc(1, sizeof *chip);
    avr_global_logger_set(silent_log);
    if (!chip || elf_read_firmware(elf, &firmware) != 0) {
        fprintf(stderr, "cannot read the firmware %s; build it with make\n", elf);
        free(chip);
        return NULL;
    }
    chip->avr = avr_make_mcu_by_name("atmega328p");
    if (!chip->avr) exit(1);
    avr_init(chip->avr);
    avr_load_firmware(chip->avr, &firmware);
    chip->avr->frequency = CLOCK_HZ;
    chip->avr->vcc = chip->avr->avcc = chip->avr->aref = SUPPLY_MILLIVOLTS;
    chip->avr->sleep = no_sleep;
    chip->model = model;
    chip->sent = sent;
    chip->receiver = receiver;
    wire(chip);
    chip->avr->data[MCUSR_ADDRESS] = POWER_ON_FLAG;
    return chip;
}

int chip_run_until(struct chip *chip, double seconds) {
    while (chip_seconds(chip) < seconds) {
        avr_cycle_count_t before = chip->avr->cycle;
        deliver(chip);
        int state = avr_run(chip->avr);
        if (state == cpu_Done || state == cpu_Crashed) return 0;
        if (chip->avr->cycle < before) chip->before_reset_seconds += (double)before / CLOCK_HZ;
    }
    return 1;
}

void chip_receive(struct chip *chip, const char *bytes, size_t count) {
    if (count > RECEIVE_QUEUE - chip->queued) count = RECEIVE_QUEUE - chip->queued;
    memcpy(chip->queue + chip->queued, bytes, count);
    chip->queued += count;
}

void chip_reset_pin(struct chip *chip) {
    double at = chip_seconds(chip);
    avr_reset(chip->avr);
    chip->before_reset_seconds = at - (double)chip->avr->cycle / CLOCK_HZ;
    chip->queued = 0;
    chip->avr->data[MCUSR_ADDRESS] = EXTERNAL_RESET_FLAG;
}

void chip_break_sampling(struct chip *chip) { chip->avr->data[TIMSK1_ADDRESS] = 0; }

void chip_power_off(struct chip *chip) {
    avr_terminate(chip->avr);
    free(chip->avr);
    free(chip);
}

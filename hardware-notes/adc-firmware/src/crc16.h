/* CRC-16 of the line protocol: polynomial 0x1021 (ITU-T V.41), most significant bit first, start 0xFFFF. */
#ifndef CRC16_H
#define CRC16_H

#include <stdint.h>

#define CRC16_START 0xFFFFu

uint16_t crc16_add(uint16_t crc, uint8_t byte);

#endif

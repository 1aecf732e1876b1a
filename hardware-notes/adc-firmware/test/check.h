/* The few words that the tests need. */
#ifndef CHECK_H
#define CHECK_H

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define CHECK(condition)                                                      \
    do {                                                                      \
        if (!(condition)) {                                                   \
            fprintf(stderr, "%s:%d: not so: %s\n", __FILE__, __LINE__, #condition); \
            exit(1);                                                          \
        }                                                                     \
    } while (0)

#define CHECK_TEXT(actual, expected)                                                                     \
    do {                                                                                                 \
        if (strcmp(actual, expected) != 0) {                                                             \
            fprintf(stderr, "%s:%d: is\n  %s\nnot\n  %s\n", __FILE__, __LINE__, actual, expected);       \
            exit(1);                                                                                     \
        }                                                                                                \
    } while (0)

#define PASSED() printf("%s: passed\n", __FILE__)

#endif

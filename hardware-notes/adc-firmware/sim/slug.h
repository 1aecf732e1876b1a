/* A hand turning a slug through its peak, a little past it, back to it, and letting go. */
#ifndef SLUG_H
#define SLUG_H

#define SLUG_REST_VOLTS 0.22 /* detector with no signal */
#define SLUG_PEAK_VOLTS 1.60 /* what the signal adds at the peak */

/* Time from the start of the story, at which the slug is at the peak for the first time, and for good. */
#define SLUG_FIRST_AT_PEAK_SECONDS 5.0
#define SLUG_BACK_AT_PEAK_SECONDS 8.5

/* Turns away from the peak at this time. */
double slug_turns(double seconds);

/* Detector voltage, negative as a diode detector's usually is. */
double slug_volts(double seconds);

#endif

package org.slugpeak.core.peak.bench;

/**
 * One kind of run.
 *
 * @param name a few words
 * @param halfWidthDegrees of the resonance, in turn of the adjuster
 * @param speedDegreesPerSecond of the first travel
 * @param rate readings per second
 * @param noise one sigma of a reading, part of the greatest reading
 * @param law how the readings are spoilt
 * @param hand what the hand does wrong
 */
record Family(
        String name,
        double halfWidthDegrees,
        double speedDegreesPerSecond,
        double rate,
        double noise,
        Law law,
        Habit hand) {

    /** An IF slug: half-width 170 degrees of turn. */
    static final double IF_SLUG = 170;
    /** A sharp circuit. */
    static final double SHARP = 85;
    /** A trimmer. */
    static final double TRIMMER = 26;

    /** What the hand does beside turning evenly. */
    enum Habit {
        PLAIN,
        PAUSES,
        WRONG_WAY,
        OVERSHOOTS
    }

    /**
     * How the set and the meter spoil the reading.
     *
     * @param avcPower the resonance curve is raised to this power
     * @param step last digit of the meter, part of the greatest reading; 0 for none
     * @param spikes part of the readings that are wild
     * @param hum amplitude of the beat, part of the reading
     * @param humHertz its frequency
     * @param driftDbPerMinute downwards
     * @param flicker one sigma of 1/f noise per octave, part of the greatest reading
     * @param jitter intervals vary by up to this part of themselves
     * @param dropOuts part of the readings that never come
     * @param proportional the noise goes with the reading
     */
    record Law(
            double avcPower,
            double step,
            double spikes,
            double hum,
            double humHertz,
            double driftDbPerMinute,
            double flicker,
            double jitter,
            double dropOuts,
            boolean proportional) {

        static final Law CLEAN = new Law(1, 0, 0, 0, 0, 0, 0, 0, 0, false);

        Law avc(double power) {
            return new Law(
                    power, step, spikes, hum, humHertz, driftDbPerMinute, flicker, jitter, dropOuts, proportional);
        }

        Law step(double size) {
            return new Law(
                    avcPower, size, spikes, hum, humHertz, driftDbPerMinute, flicker, jitter, dropOuts, proportional);
        }

        Law spikes(double part) {
            return new Law(
                    avcPower, step, part, hum, humHertz, driftDbPerMinute, flicker, jitter, dropOuts, proportional);
        }

        Law hum(double part, double hertz) {
            return new Law(
                    avcPower, step, spikes, part, hertz, driftDbPerMinute, flicker, jitter, dropOuts, proportional);
        }

        Law drift(double dbPerMinute) {
            return new Law(avcPower, step, spikes, hum, humHertz, dbPerMinute, flicker, jitter, dropOuts, proportional);
        }

        Law flicker(double part) {
            return new Law(
                    avcPower, step, spikes, hum, humHertz, driftDbPerMinute, part, jitter, dropOuts, proportional);
        }

        Law irregular(double jitterPart, double lostPart) {
            return new Law(
                    avcPower,
                    step,
                    spikes,
                    hum,
                    humHertz,
                    driftDbPerMinute,
                    flicker,
                    jitterPart,
                    lostPart,
                    proportional);
        }

        Law withReading() {
            return new Law(avcPower, step, spikes, hum, humHertz, driftDbPerMinute, flicker, jitter, dropOuts, true);
        }
    }

    boolean trimmer() {
        return halfWidthDegrees == TRIMMER;
    }
}

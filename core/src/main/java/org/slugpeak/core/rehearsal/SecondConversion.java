package org.slugpeak.core.rehearsal;

import java.util.List;

/**
 * The second mixer of a double superhet with its oscillator, and the amplifier behind it. One thread at a time.
 *
 * @param oscillatorHz of its oscillator, in its working position
 * @param oscillator coil that tunes it
 * @param lower amplifier of the second intermediate frequency
 */
record SecondConversion(double oscillatorHz, Knob oscillator, IfStrip lower) implements StripPart {

    @Override
    public double response(double hz) {
        double nowHz = oscillatorHz / Math.sqrt(1 + oscillator.effect());
        return lower.response(Circuits.converted(hz, nowHz));
    }

    @Override
    public double widthHz() {
        return lower.widthHz();
    }

    @Override
    public List<Winding> windings() {
        return List.of();
    }
}

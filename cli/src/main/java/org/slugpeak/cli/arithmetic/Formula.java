package org.slugpeak.cli.arithmetic;

/** The formulas that {@code --explain} shows, each with its units and its source. */
public enum Formula {
    /** Oscillator and image. */
    SUPERHET(
            "fo = f + IF, image = f + 2 IF; with the oscillator below the signal: fo = f - IF, image = f - 2 IF",
            "f dial, fo oscillator, IF intermediate frequency; all in the same unit",
            "Terman, Radio Engineers' Handbook, 1943, section 9"),
    /** Harmonics that fool. */
    HARMONICS(
            "a generator at fg is heard where n fg = f, f + 2 IF or IF; a set whistles where f = n IF",
            "n whole number from 2 to 5; frequencies in the same unit",
            "arithmetic"),
    /** Mixing products. */
    RESPONSES(
            "|m fo +- n fs| = IF, hence fs = |m fo +- IF| / n",
            "m 0 to 5, n 1 to 5, order m + n; fs signal frequency; all in the same unit",
            "Terman, Radio Engineers' Handbook, 1943, section 9"),
    /** Three-point tracking. */
    TRACKING(
            "a = f1+f2+f3, b2 = f1f2+f1f3+f2f3, c3 = f1f2f3, d = a+2IF, l2 = (b2 d-c3)/(2IF), m2 = l2+IF^2+a d-b2,"
                    + " n2 = (c3 d+IF^2 l2)/m2, K = 1/(4 pi^2 L): trimmer Ct = K/l2, padder Cp = K(1/n2-1/l2),"
                    + " coil Lo = (Cp+Ct)/(4 pi^2 m2 Cp Ct)",
            "frequencies Hz, L signal coil and Lo oscillator coil H, Ct and Cp F; padder in series with (gang + trimmer),"
                    + " coil across both",
            "Terman, Radio Engineers' Handbook, 1943, section 9; checked against a numerical solution of the circuit"),
    /** Image ratio. */
    IMAGE_RATIO(
            "ratio = sum of 10 lg(1 + (Q y)^2) over the tuned circuits, y = fi/f - f/fi",
            "ratio dB, Q loaded and without unit, f dial and fi image in the same unit",
            "universal resonance curve, Terman, Radio Engineers' Handbook, 1943, section 3"),
    /** Field of a loop. */
    LOOP(
            "E = 376.73 N I r^2 / (2 (r^2 + d^2)^1.5), I = EMF / |R + j 2 pi f L|",
            "E V/m, N turns, I A, r radius m, d distance m, R generator and series resistance ohm, L H, f Hz;"
                    + " coil and loop on one axis (half of it where they lie in one plane)",
            "Biot and Savart; Terman and Pettit, Electronic Measurements, 1952, has the form for far away"),
    /** Meter loading. */
    LOADING(
            "V = V' (Rm + Rs) / Rm; error = 20 lg(Rm / (Rm + Rs))",
            "V without the meter, V' as shown, Rm meter and Rs point resistance in the same unit, error dB",
            "Ohm's law, Thevenin's source"),
    /** Output power. */
    POWER("P = V^2 / R", "P W, V volts RMS, R load ohm (nominal impedance of the speaker)", "Joule's law");

    private final String expression;
    private final String units;
    private final String source;

    Formula(String expression, String units, String source) {
        this.expression = expression;
        this.units = units;
        this.source = source;
    }

    /**
     * Formula, units and source.
     *
     * @return three lines
     */
    public String explanation() {
        return "formula: " + expression + "%nunits:   ".formatted() + units + "%nsource:  ".formatted() + source;
    }
}

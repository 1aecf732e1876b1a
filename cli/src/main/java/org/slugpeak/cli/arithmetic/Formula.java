package org.slugpeak.cli.arithmetic;

import org.slugpeak.cli.words.FormulaPhrase;

/** The formulas that {@code --explain} shows, each with its units and its source. */
public enum Formula {
    /** Oscillator and image. */
    SUPERHET(FormulaPhrase.SUPERHET, FormulaPhrase.SUPERHET_UNITS, FormulaPhrase.SUPERHET_SOURCE),
    /** Harmonics that fool. */
    HARMONICS(FormulaPhrase.HARMONICS, FormulaPhrase.HARMONICS_UNITS, FormulaPhrase.HARMONICS_SOURCE),
    /** Mixing products. */
    RESPONSES(FormulaPhrase.RESPONSES, FormulaPhrase.RESPONSES_UNITS, FormulaPhrase.RESPONSES_SOURCE),
    /** Three-point tracking. */
    TRACKING(FormulaPhrase.TRACKING, FormulaPhrase.TRACKING_UNITS, FormulaPhrase.TRACKING_SOURCE),
    /** Image ratio. */
    IMAGE_RATIO(FormulaPhrase.IMAGE_RATIO, FormulaPhrase.IMAGE_RATIO_UNITS, FormulaPhrase.IMAGE_RATIO_SOURCE),
    /** Field of a loop. */
    LOOP(FormulaPhrase.LOOP, FormulaPhrase.LOOP_UNITS, FormulaPhrase.LOOP_SOURCE),
    /** Meter loading. */
    LOADING(FormulaPhrase.LOADING, FormulaPhrase.LOADING_UNITS, FormulaPhrase.LOADING_SOURCE),
    /** Output power. */
    POWER(FormulaPhrase.POWER, FormulaPhrase.POWER_UNITS, FormulaPhrase.POWER_SOURCE);

    private final FormulaPhrase expression;
    private final FormulaPhrase units;
    private final FormulaPhrase source;

    Formula(FormulaPhrase expression, FormulaPhrase units, FormulaPhrase source) {
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
        return String.join(
                System.lineSeparator(),
                FormulaPhrase.FORMULA.of(expression.of()),
                FormulaPhrase.UNITS.of(units.of()),
                FormulaPhrase.SOURCE.of(source.of()));
    }
}

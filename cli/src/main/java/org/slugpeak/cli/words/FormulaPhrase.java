package org.slugpeak.cli.words;

/** The formulas, with their units and sources. Immutable; any thread may use it. */
public enum FormulaPhrase implements Saying {
    SUPERHET,
    SUPERHET_UNITS,
    SUPERHET_SOURCE,
    HARMONICS,
    HARMONICS_UNITS,
    HARMONICS_SOURCE,
    RESPONSES,
    RESPONSES_UNITS,
    RESPONSES_SOURCE,
    TRACKING,
    TRACKING_UNITS,
    TRACKING_SOURCE,
    IMAGE_RATIO,
    IMAGE_RATIO_UNITS,
    IMAGE_RATIO_SOURCE,
    LOOP,
    LOOP_UNITS,
    LOOP_SOURCE,
    LOADING,
    LOADING_UNITS,
    LOADING_SOURCE,
    POWER,
    POWER_UNITS,
    POWER_SOURCE,
    FORMULA,
    UNITS,
    SOURCE;

    @Override
    public String kind() {
        return "formula";
    }
}

package org.slugpeak.bridge.line;

import org.slugpeak.core.reading.Measurand;

/** What is known of an instrument that prints lines: at first its description, then what it says of itself. One thread at a time. */
final class Known {

    /** A board that starts may print this many lines before its first reading; after that they are no greeting. */
    private static final int LONGEST_BANNER = 20;

    private final LineFormat format;
    private Scale scale;
    private Measurand measurand;
    private String description;
    private boolean settled;
    private boolean started;
    private boolean heardReading;
    private int bannerLines;

    Known(LineFormat format) {
        this.format = format;
        this.scale = format.scale();
        this.measurand = format.measurand();
        this.description = format.title();
        this.settled = format.start().isEmpty() && !measurand.unit().isEmpty();
    }

    /** The link was opened anew: what the instrument is set to must be heard again, what it measures stays. */
    void begin() {
        started = format.start().isEmpty();
        heardReading = false;
        bannerLines = 0;
    }

    Scale scale() {
        return scale;
    }

    Measurand measurand() {
        return measurand;
    }

    String description() {
        return description;
    }

    /** Whether measurand and description will not change any more. */
    boolean settled() {
        return settled;
    }

    /** Whether numbers can be scaled. */
    boolean started() {
        return started;
    }

    boolean heardReading() {
        return heardReading;
    }

    void started(StartLine line) {
        scale = line.scale();
        measurand = new Measurand(format.measurand().quantity(), line.unit());
        description = line.name();
        started = true;
        settled = true;
    }

    void readingHeard(String unit) {
        if (!settled) {
            boolean volts = unit.equals("V") && measurand.equals(Measurand.UNKNOWN);
            measurand = new Measurand(volts ? "voltage" : measurand.quantity(), unit);
            settled = true;
        }
        heardReading = true;
    }

    /** Takes a line that is no reading for a greeting, if it may still be one. */
    boolean takesAsBanner(String quoted) {
        if (heardReading || bannerLines >= LONGEST_BANNER) {
            return false;
        }
        bannerLines++;
        description = format.title() + ", says " + quoted;
        return true;
    }

    /** Whether a unit written behind a number is another than before. */
    boolean isForeign(String unit) {
        return settled && format.start().isEmpty() && !unit.isEmpty() && !unit.equals(measurand.unit());
    }
}

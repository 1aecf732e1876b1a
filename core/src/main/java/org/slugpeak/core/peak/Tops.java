package org.slugpeak.core.peak;

/** When a second maximum is the same one again, an aged one, or another. */
final class Tops {

    /** The level came back to a maximum when it made good this part of what it had lost. */
    static final double CAME_BACK = 0.75;
    /** A maximum that comes back lower by up to this has drifted. */
    static final double AGES_BY_DB = 1;
    /** Two tops this close to each other are one, met twice. */
    static final double SAME_TOP_DB = 0.3;
    /** A shallower dip is not told as a separation of two maxima. */
    static final double LEAST_DIP_DB = 1;
    /** A hand that turns back at a verdict does not fall this far; so a rise beyond after it is another maximum. */
    static final double SEPARATE_DB = 3;

    private Tops() {}
}

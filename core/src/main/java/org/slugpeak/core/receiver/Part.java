package org.slugpeak.core.receiver;

/** What can be turned in the simulated receiver. Immutable; any thread may use it. */
public enum Part {
    /** First IF transformer, secondary slug. */
    T1_TOP("T1 top", true),
    /** First IF transformer, primary slug. */
    T1_BOTTOM("T1 bottom", true),
    /** Second IF transformer, secondary slug. */
    T2_TOP("T2 top", true),
    /** Second IF transformer, primary slug. */
    T2_BOTTOM("T2 bottom", true),
    /** Aerial trimmer, medium wave. */
    C1("C1 aerial trimmer", false),
    /** Oscillator trimmer, medium wave. */
    C2("C2 oscillator trimmer", false),
    /** Oscillator padder, medium wave. */
    C3("C3 padder", false),
    /** Oscillator trimmer, short wave. */
    C5("C5 short-wave oscillator trimmer", false);

    private final String label;
    private final boolean slug;

    Part(String label, boolean slug) {
        this.label = label;
        this.slug = slug;
    }

    /**
     * What is written beside it on the chassis.
     *
     * @return never empty
     */
    public String label() {
        return label;
    }

    /**
     * Whether it is the slug of an IF transformer.
     *
     * @return false for trimmers and padder
     */
    public boolean isSlug() {
        return slug;
    }
}

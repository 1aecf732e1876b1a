package org.slugpeak.cli.display;

/** What is shown instead of the session until it is asked for again. Immutable; two that are equal look the same. */
interface Overlay {

    void draw(Grid grid, Symbols symbols);
}

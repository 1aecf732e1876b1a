package org.slugpeak.cli.display;

/**
 * The characters that pictures are made of, for terminals that know block characters and for those that do not. Immutable;
 * any thread may use it.
 *
 * @param hasHalves whether a cell can be half filled
 * @param upper upper half of a cell
 * @param lower lower half of a cell
 * @param full a whole cell
 * @param hatched a whole cell that is told from {@code full} without colour
 * @param mark the fixed mark of what is sought
 * @param rail where a bar may still grow
 * @param up an arrow
 * @param down an arrow
 * @param level neither
 * @param dot between two words
 */
record Symbols(
        boolean hasHalves,
        char upper,
        char lower,
        char full,
        char hatched,
        char mark,
        char rail,
        char up,
        char down,
        char level,
        char dot) {

    static final Symbols BLOCKS = new Symbols(
            true, '\u2580', '\u2584', '\u2588', '\u2592', '\u2503', '\u00b7', '\u25b2', '\u25bc', '\u25a0', '\u00b7');

    static final Symbols ASCII = new Symbols(false, '#', '#', '#', '/', '|', '.', '^', 'v', '=', '-');
}

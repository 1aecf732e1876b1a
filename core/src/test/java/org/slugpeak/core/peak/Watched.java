package org.slugpeak.core.peak;

import java.util.function.DoubleUnaryOperator;
import java.util.function.LongConsumer;

/** A level that is watched in blocks of 20 ms; it is given in parts of {@link #VOLTS}, which is no round number. */
final class Watched {

    static final double VOLTS = 0.3;

    final Blocks blocks = new Blocks();
    final Sight sight = new Sight(blocks.front);
    private LongConsumer afterEach = tNanos -> {};

    /** Who looks after each block, from now on. */
    void by(LongConsumer newAfterEach) {
        afterEach = newAfterEach;
    }

    /** Goes on for so long; the level depends on the seconds since now. */
    void follow(double seconds, DoubleUnaryOperator level) {
        int count = (int) Math.round(seconds / Blocks.SECONDS);
        blocks.add(count, i -> VOLTS * level.applyAsDouble((i + 1) * Blocks.SECONDS), () -> {
            sight.look(nowNanos());
            afterEach.accept(nowNanos());
        });
    }

    void rest(double seconds, double level) {
        follow(seconds, t -> level);
    }

    /** The level jumps: what was read before does not join what follows. */
    void jump() {
        blocks.front.pyramid.clear();
        blocks.front.noise.unsettle();
        sight.gap();
    }

    long nowNanos() {
        return blocks.nowNanos();
    }

    /** Part of a level that is left so many decibels below it. */
    static double below(double db) {
        return Math.pow(10, -db / 20);
    }
}

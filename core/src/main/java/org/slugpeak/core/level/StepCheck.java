package org.slugpeak.core.level;

import java.util.ArrayList;
import java.util.List;

/**
 * One check under way: measures where the reading stands, asks for a move, waits until the reading stands again, and so on, and
 * at the end asks to put things back. Time comes with the readings. One thread at a time.
 */
final class StepCheck {

    /** A level that stood for a while: median and scatter of the readings, as read. */
    record Level(double value, double scatter) {}

    /** Hears how the check goes. */
    interface Listener {

        /** Asks the user for a move, from 0; as many as the check has: to put things back. */
        void ask(long tNanos, int move);

        /** Whether the levels so far tell all that there is to know, so that no further move is asked for. */
        default boolean isEnough(List<Level> levels) {
            return false;
        }

        /**
         * All levels are known: the one before, then one for each move.
         *
         * @return whether the user shall put things back
         */
        boolean measured(long tNanos, List<Level> levels);

        /** The check gives up, because nothing changed for so long. */
        void dropped(long tNanos, double waitedSeconds);
    }

    private enum Phase {
        BEFORE,
        WAITING,
        SETTLING,
        RESTORING,
        OVER
    }

    /** A move that shows in the reading changes it by more than this share. */
    private static final double STEP_SHARE = 0.12;

    /** A level counts as standing when its halves agree within this share (0.05 dB). */
    private static final double STANDING_SHARE = 0.006;

    private static final double COLLECT_SECONDS = 0.8;
    private static final double SKIP_SECONDS = 0.5;
    private static final double UNSTEADY_SECONDS = 4;

    private final CheckKind kind;
    private final Listener listener;
    private final List<Level> levels = new ArrayList<>();
    private final RecentReadings recent = new RecentReadings(COLLECT_SECONDS);

    private Phase phase = Phase.BEFORE;
    private long sinceNanos;
    private boolean begun;

    StepCheck(CheckKind kind, Listener listener) {
        this.kind = kind;
        this.listener = listener;
    }

    boolean isOver() {
        return phase == Phase.OVER;
    }

    /** The user says that the move is made. */
    void done(long tNanos) {
        if (phase == Phase.WAITING) {
            enter(Phase.SETTLING, tNanos);
        } else if (phase == Phase.RESTORING) {
            enter(Phase.OVER, tNanos);
        }
    }

    void accept(long tNanos, double value) {
        if (!begun) {
            begun = true;
            sinceNanos = tNanos;
        }
        double seconds = (tNanos - sinceNanos) / 1e9;
        switch (phase) {
            case BEFORE -> collect(tNanos, value, seconds, 0);
            case WAITING -> await(tNanos, value, seconds);
            case SETTLING -> collect(tNanos, value, seconds, SKIP_SECONDS);
            case RESTORING -> restore(tNanos, value, seconds);
            case OVER -> {}
        }
    }

    private void collect(long tNanos, double value, double seconds, double skipSeconds) {
        if (seconds < skipSeconds) {
            return;
        }
        recent.add(tNanos, value);
        boolean enough = recent.size() >= 4 && recent.spannedNanos() >= COLLECT_SECONDS * 0.9e9;
        if (enough && (recent.stands(STANDING_SHARE) || seconds > skipSeconds + UNSTEADY_SECONDS)) {
            levels.add(new Level(recent.median(), recent.standardDeviation()));
            proceed(tNanos);
        }
    }

    private void proceed(long tNanos) {
        if (levels.size() <= kind.moves() && !listener.isEnough(List.copyOf(levels))) {
            enter(Phase.WAITING, tNanos);
            listener.ask(tNanos, levels.size() - 1);
        } else if (listener.measured(tNanos, List.copyOf(levels))) {
            enter(Phase.RESTORING, tNanos);
            listener.ask(tNanos, kind.moves());
        } else {
            enter(Phase.OVER, tNanos);
        }
    }

    private void await(long tNanos, double value, double seconds) {
        double before = levels.get(levels.size() - 1).value();
        if (kind.seesStep() && Math.abs(value - before) > STEP_SHARE * Math.abs(before)) {
            enter(Phase.SETTLING, tNanos);
        } else if (seconds > kind.patienceSeconds()) {
            enter(Phase.OVER, tNanos);
            listener.dropped(tNanos, kind.patienceSeconds());
        }
    }

    private void restore(long tNanos, double value, double seconds) {
        double before = levels.get(0).value();
        boolean back = kind.seesStep() && Math.abs(value - before) < STEP_SHARE / 2 * Math.abs(before);
        if ((back && seconds > SKIP_SECONDS) || seconds > kind.patienceSeconds()) {
            enter(Phase.OVER, tNanos);
        }
    }

    private void enter(Phase next, long tNanos) {
        phase = next;
        sinceNanos = tNanos;
        recent.clear();
    }
}

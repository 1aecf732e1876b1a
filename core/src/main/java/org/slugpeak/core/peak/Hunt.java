package org.slugpeak.core.peak;

/**
 * The order of things, whatever is sought: a {@link HuntGoal} says what it sees, the stage makes of it what there is to tell.
 *
 * <pre>
 *   start -----> SEARCHING ------ goes away: passed ------> PAST
 *                    ^                                       |  ^
 *                    |   taken back, or well beyond it       |  | passed again,
 *                    +---------------------------------------+  | or stopped short
 *                    |                                       |  |
 *                    |                back at it: returned   v  |
 *                    +-------------------------------------- BACK
 *                    |                                       |  ^
 *                    |                dwelt there: held      v  | passed again -> PAST
 *                    +-------------------------------------- HELD
 * </pre>
 *
 * <p>While the signal is away no stage goes on. One thread at a time.
 */
final class Hunt implements Seeker {

    /** A hand needs this long to stop, or to turn round: what comes sooner after a word does not follow from it. */
    static final double REACTION_SECONDS = 0.3;

    private final Sight sight;
    private final HuntGoal goal;
    private final Searching searching = new Searching();
    private final Past past = new Past();
    private final Back back = new Back();
    private final Held held = new Held();
    private Stage stage = searching;

    Hunt(Sight sight, HuntGoal goal) {
        this.sight = sight;
        this.goal = goal;
    }

    /** Where the hunt stands; a stage owns what only it needs. There is one of each, begun anew each time: nothing is made per pass. */
    private abstract class Stage {

        abstract Stage next(long tNanos);

        Stage towards(long tNanos) {
            return this;
        }

        Stage away(long tNanos) {
            return goal.passes(tNanos, false) ? past.begin(tNanos) : this;
        }

        void gap() {}

        void interrupted() {
            goal.interrupted();
        }
    }

    private final class Searching extends Stage {

        @Override
        Stage next(long tNanos) {
            goal.search(tNanos);
            return this;
        }

        @Override
        void interrupted() {}
    }

    private final class Past extends Stage {

        private long sinceNanos;

        Past begin(long tNanos) {
            sinceNanos = tNanos;
            return this;
        }

        @Override
        Stage next(long tNanos) {
            goal.past(tNanos);
            if (goal.isBeyond(tNanos, false)) {
                return searching;
            }
            if (!isHeard(tNanos) || !goal.isBack(tNanos)) {
                return this;
            }
            goal.returned(tNanos);
            return back.begin(tNanos);
        }

        private boolean isHeard(long tNanos) {
            return Elapsed.seconds(sinceNanos, tNanos) >= REACTION_SECONDS;
        }

        @Override
        Stage away(long tNanos) {
            return goal.passes(tNanos, true) ? past.begin(tNanos) : this;
        }

        @Override
        Stage towards(long tNanos) {
            if (isHeard(tNanos)) {
                return this;
            }
            goal.takeBack(tNanos);
            return searching;
        }
    }

    private final class Back extends Stage {

        private long sinceNanos;
        private boolean beginsAgain;

        Back begin(long tNanos) {
            sinceNanos = tNanos;
            beginsAgain = false;
            return this;
        }

        @Override
        Stage next(long tNanos) {
            if (goal.isBeyond(tNanos, false)) {
                return searching;
            }
            if (beginsAgain) {
                beginsAgain = false;
                sinceNanos = tNanos;
            }
            return switch (goal.stay(tNanos, sinceNanos)) {
                case WAITS -> this;
                case SHORT -> past;
                case HELD -> {
                    goal.held(tNanos);
                    yield held;
                }
            };
        }

        @Override
        void gap() {
            beginsAgain = true;
        }
    }

    private final class Held extends Stage {

        @Override
        Stage next(long tNanos) {
            return goal.isBeyond(tNanos, true) ? searching : this;
        }
    }

    @Override
    public void block(long tNanos) {
        sight.look(tNanos);
        if (!sight.isReady()) {
            return;
        }
        switch (goal.look(tNanos)) {
            case NO_SIGNAL -> {}
            case NOTHING -> stage = stage.next(tNanos);
            case TOWARDS -> stage = stage.towards(tNanos).next(tNanos);
            case AWAY -> stage = stage.away(tNanos).next(tNanos);
            case LOST -> stage = searching.next(tNanos);
        }
    }

    @Override
    public void gap() {
        sight.gap();
        goal.gap();
        stage.gap();
    }

    @Override
    public void interrupted() {
        stage.interrupted();
    }

    @Override
    public void jump(long tNanos, double before) {
        goal.jump(tNanos, before);
    }

    @Override
    public void restart() {
        sight.restart();
        goal.restart();
        stage = searching;
    }
}

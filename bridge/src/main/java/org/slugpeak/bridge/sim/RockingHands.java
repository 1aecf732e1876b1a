package org.slugpeak.bridge.sim;

import java.util.Optional;
import java.util.SplittableRandom;
import org.slugpeak.core.rehearsal.Knob;
import org.slugpeak.core.rehearsal.PlannedScene;
import org.slugpeak.core.rehearsal.PlannedSet;
import org.slugpeak.core.session.HeardScale;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/**
 * One hand sweeps the gang to and fro across a signal, the other turns an adjuster slowly: past the best sweep, and back more
 * slowly. Speeds are made up: a sweep across the passband takes a second, the adjuster passes its optimum in a dozen sweeps.
 * One thread at a time.
 */
final class RockingHands {

    private static final double PASSBANDS_PER_SECOND = 1;

    /** The gang turns back where the reading above rest has fallen to this part of the sweep's top. */
    private static final double FALLEN = 0.7;

    /** Farther than this the gang does not go, as a part of the dial's frequency. */
    private static final double FARTHEST = 0.06;

    private static final double WIDTHS_PER_SECOND = 1 / 20.0;
    private static final double LEAST_SPEED = 0.25;

    /** Sweeps that are so much lower, dB, so often in a row, are worse. */
    private static final double WORSE_DB = -0.3;

    private static final int IN_A_ROW = 3;

    /** How often it goes from stop to stop without the word that it is there. */
    private static final int MOST_STOPS = 4;

    private final PlannedSet set;
    private final SplittableRandom random;
    private final HeardScale heard = new HeardScale();
    private Optional<PlannedScene> scene = Optional.empty();
    private double gangHzPerSecond;
    private double turnsPerSecond;
    private double slower = 1;
    private double sweepTop;
    private double turnedAtDb;
    private int worse;
    private int stops;

    RockingHands(PlannedSet set, SplittableRandom random) {
        this.set = set;
        this.random = random;
    }

    void begin(PlannedScene wanted, Bench bench) {
        scene = Optional.of(wanted);
        gangHzPerSecond = PASSBANDS_PER_SECOND * set.passbandHz(wanted);
        turnsPerSecond = WIDTHS_PER_SECOND * set.rockedWidthTurns(wanted) * (random.nextBoolean() ? 1 : -1);
        slower = 1;
        worse = 0;
        turnedAtDb = 0;
        stops = 0;
        sweepTop = 0;
        bench.other().obeys(false);
    }

    boolean isAtWork() {
        return scene.isPresent();
    }

    void stop() {
        scene = Optional.empty();
    }

    void hear(SessionRecord record) {
        heard.take(record);
        if (scene.isEmpty()) {
            return;
        }
        if (record instanceof ReadingTaken taken) {
            double level = Math.abs(heard.scale().aboveRest(taken.reading().value()));
            sweepTop = Math.max(sweepTop, level);
            if (level < FALLEN * sweepTop) {
                turnGang(level);
            }
        } else if (record instanceof Work.Swept swept) {
            swept(swept.belowBestDb());
        }
    }

    /** Worse and worse: the other way. Where it was turned round the wrong way, it gets worse still. */
    private void swept(double belowBestDb) {
        worse = belowBestDb < turnedAtDb + WORSE_DB ? worse + 1 : 0;
        if (belowBestDb > WORSE_DB) {
            turnedAtDb = 0;
        }
        if (worse == IN_A_ROW) {
            worse = 0;
            turnedAtDb = belowBestDb;
            slower = Math.max(LEAST_SPEED, slower / 2);
            turnsPerSecond = -turnsPerSecond;
        }
    }

    private void turnGang(double level) {
        gangHzPerSecond = -gangHzPerSecond;
        sweepTop = level;
    }

    void step(Bench bench) {
        if (scene.isEmpty()) {
            bench.other().obeys(true);
            return;
        }
        double seconds = Bench.TICK_NANOS / 1e9;
        double markHz = scene.get().dialHz();
        set.tune(set.dialHz() + gangHzPerSecond * seconds);
        if (Math.abs(set.dialHz() / markHz - 1) > FARTHEST && (set.dialHz() - markHz) * gangHzPerSecond > 0) {
            turnGang(0);
        }
        set.knob(scene.get().step().adjuster()).ifPresent(knob -> turn(knob, seconds));
    }

    private void turn(Knob knob, double seconds) {
        knob.turnTo(knob.turns() + turnsPerSecond * slower * seconds);
        if (Math.abs(knob.turns()) >= knob.reachTurns() && knob.turns() * turnsPerSecond > 0) {
            turnsPerSecond = -turnsPerSecond;
            stops++;
            if (stops >= MOST_STOPS) {
                stop();
            }
        }
    }
}

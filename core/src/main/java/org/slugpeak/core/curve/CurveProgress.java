package org.slugpeak.core.curve;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.HeardScale;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;

/**
 * Leads through a response curve, one generator frequency after the other. It hears every record of the session, says which
 * frequency is to be set, waits until the reading stands, and gives the point. Levels are magnitudes above the resting reading
 * where one was taken; those of a discriminator keep their sign.
 *
 * <pre>
 *   CHECKING --checks over--&gt; SETTING --set--&gt; WAITING --reading stands, or key--&gt; SETTING the next ... OVER
 * </pre>
 *
 * <p>One thread at a time.
 */
public final class CurveProgress implements RecordSink {

    /** A reading stands when it did not move for so long. */
    private static final long STAND_NANOS = 1_000_000_000L;

    /** A generator that was moved shows in the mean reading by this share, a sixth of a decibel. */
    private static final double MOVED_SHARE = 0.02;

    /** Where the reading does not come to stand for so long, it is taken as it is. */
    private static final long PATIENCE_NANOS = 20_000_000_000L;

    private enum Phase {
        CHECKING,
        SETTING,
        WAITING,
        OVER
    }

    /**
     * What came of one frequency.
     *
     * @param hz generator frequency, Hz
     * @param level mean above rest, in the unit of the readings; NaN where no reading could be trusted
     */
    public record Taken(double hz, double level) {}

    private final List<Double> frequenciesHz;
    private final boolean keepsSign;
    private final Deque<CheckKind> checks;
    private final HeardScale heard = new HeardScale();
    private final StandingLevel level = new StandingLevel(STAND_NANOS);
    private final Map<Integer, Taken> taken = new TreeMap<>();
    private Optional<Taken> news = Optional.empty();
    private final Hearing hearing = new Hearing();
    private CurveTiming timing;
    private Phase phase;
    private boolean checkUnderWay;
    private int next;
    private double presentHz;
    private double levelBefore = Double.NaN;
    private boolean confirmed;
    private boolean counting;
    private boolean standsYet;
    private boolean moved;
    private long sinceNanos;
    private long nowNanos;

    /**
     * A curve of which nothing is measured yet.
     *
     * @param frequenciesHz in the order in which they are set, one or more
     * @param timing when a point is taken
     * @param checksFirst what is checked before the first frequency, in this order
     * @param keepsSign whether readings below the rest are negative levels, as a discriminator's are
     */
    public CurveProgress(
            List<Double> frequenciesHz, CurveTiming timing, List<CheckKind> checksFirst, boolean keepsSign) {
        this.frequenciesHz = List.copyOf(frequenciesHz);
        this.timing = timing;
        this.keepsSign = keepsSign;
        this.checks = new ArrayDeque<>(checksFirst);
        this.phase = checksFirst.isEmpty() ? Phase.SETTING : Phase.CHECKING;
    }

    /**
     * How many points there will be.
     *
     * @return 1 or more
     */
    public int size() {
        return frequenciesHz.size();
    }

    /**
     * Which point is at hand.
     *
     * @return from 0
     */
    public int index() {
        return next;
    }

    /**
     * The check that has to begin now, once.
     *
     * @return empty while one is under way, or all are over
     */
    public Optional<CheckKind> takeCheck() {
        if (phase != Phase.CHECKING || checkUnderWay) {
            return Optional.empty();
        }
        checkUnderWay = true;
        return Optional.ofNullable(checks.peek());
    }

    /**
     * The frequency that has to be set now; asked after each record.
     *
     * @return Hz; empty while a reading is waited for
     */
    public OptionalDouble toSet() {
        return phase == Phase.SETTING ? OptionalDouble.of(frequenciesHz.get(next)) : OptionalDouble.empty();
    }

    /**
     * The frequency was set, or the user was asked to set it.
     *
     * @param hz what it really is, Hz
     */
    public void set(double hz) {
        presentHz = hz;
        standsYet = !timing.byItself();
        phase = Phase.WAITING;
        confirmed = false;
        moved = false;
        sinceNanos = nowNanos;
        level.forget();
    }

    /** The user says that it is set, or what it is: the reading is taken as soon as it stands. */
    public void next() {
        if (phase == Phase.WAITING) {
            confirmed = true;
            sinceNanos = nowNanos;
            level.forget();
        }
    }

    /**
     * The frequency that was asked for.
     *
     * @return Hz; empty where no reading is waited for
     */
    public OptionalDouble wantedHz() {
        return phase == Phase.WAITING ? OptionalDouble.of(frequenciesHz.get(next)) : OptionalDouble.empty();
    }

    /**
     * Somebody types what a counter shows, or no longer: meanwhile no point is taken.
     *
     * @param underWay whether the end of it is to be waited for
     */
    public void counting(boolean underWay) {
        counting = underWay;
    }

    /** The point before is measured again. */
    public void back() {
        if (phase == Phase.WAITING && next > 0) {
            next--;
            phase = Phase.SETTING;
        }
    }

    /** The present point is left out. */
    public void skip() {
        if (phase == Phase.WAITING) {
            toNext();
        }
    }

    /**
     * What came of the frequency that was set last, once.
     *
     * @return empty where there is nothing new
     */
    public Optional<Taken> takeNews() {
        Optional<Taken> result = news;
        news = Optional.empty();
        return result;
    }

    /**
     * The points so far, as a straight detector would show them where its law was measured; those without a signal above rest are left
     * out, unless they keep their sign. Of two that a counter found at one frequency the last one counts.
     *
     * @return ascending in frequency
     */
    public List<ResponsePoint> points() {
        Map<Double, ResponsePoint> points = new TreeMap<>();
        for (Taken each : taken.values()) {
            if (Double.isFinite(each.level())) {
                double level = keepsSign ? each.level() : heard.scale().straightAboveRest(Math.abs(each.level()));
                points.put(each.hz(), new ResponsePoint(each.hz(), level));
            }
        }
        return List.copyOf(points.values());
    }

    /**
     * Whether signs were dropped that a discriminator would have.
     *
     * @return true where readings lie clearly on both sides of the rest, and levels are magnitudes
     */
    public boolean droppedSigns() {
        return !keepsSign
                && SignedCurve.hasBothSigns(taken.values().stream()
                        .filter(each -> Double.isFinite(each.level()))
                        .map(each -> new ResponsePoint(each.hz(), each.level()))
                        .toList());
    }

    /**
     * Whether every frequency was seen to.
     *
     * @return true after the last point
     */
    public boolean isOver() {
        return phase == Phase.OVER;
    }

    @Override
    public void take(SessionRecord record) {
        nowNanos = record.tNanos();
        heard.take(record);
        record.tellFamily(hearing);
    }

    /** What moves the curve on. */
    private final class Hearing implements FamilyListener {

        @Override
        public void frame(Frame it) {
            if (it instanceof ReadingTaken taken) {
                reading(taken);
            }
        }

        /** Whoever counts once counts each point, and is waited for. */
        @Override
        public void said(Said it) {
            if (phase == Phase.WAITING && it instanceof Said.Counted counted && counted.taken()) {
                timing = CurveTiming.byHand(0);
                presentHz = counted.hz();
                next();
            }
        }

        @Override
        public void request(Request it) {
            if (phase == Phase.WAITING && it instanceof Request.GeneratorStands stands && stands.emfVolts() != 0) {
                presentHz = stands.hz();
                standsYet = true;
                sinceNanos = nowNanos;
                level.forget();
            } else if (it instanceof Request.GeneratorFails) {
                standsYet = false;
            } else if (phase == Phase.CHECKING && it instanceof Request.CheckOver) {
                checkUnderWay = false;
                checks.poll();
                phase = checks.isEmpty() ? Phase.SETTING : Phase.CHECKING;
            }
        }
    }

    private void reading(ReadingTaken it) {
        if (phase != Phase.WAITING || !standsYet) {
            return;
        }
        if (it.reading().condition().isTrusted()) {
            double above = heard.scale().aboveRest(it.reading().value());
            level.see(nowNanos, above);
            moved = moved || Math.abs(level.mean() - levelBefore) > MOVED_SHARE * Math.abs(levelBefore);
        }
        boolean patient = nowNanos - sinceNanos >= timing.dwellNanos();
        boolean due = !counting && (confirmed || patient || (timing.seesMove() && moved));
        boolean outOfPatience = due && nowNanos - sinceNanos >= PATIENCE_NANOS;
        if ((due && level.stands()) || outOfPatience) {
            point();
        }
    }

    private void point() {
        levelBefore = level.mean();
        taken.put(next, new Taken(presentHz, levelBefore));
        news = Optional.of(new Taken(presentHz, keepsSign ? levelBefore : Math.abs(levelBefore)));
        toNext();
    }

    private void toNext() {
        next++;
        phase = next < frequenciesHz.size() ? Phase.SETTING : Phase.OVER;
    }
}

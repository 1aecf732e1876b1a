package org.slugpeak.cli.cue;

import java.util.Optional;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Called;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.words.CuePhrase;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/**
 * Decides what is heard: the tone of the reading, and whatever the moment calls for. Time comes only with the records, so a replayed
 * session sounds as the live one did. One thread at a time.
 */
final class Conductor implements RecordSink {

    /** After so long without movement the tone gives way to pings. */
    static final long REST_AFTER_NANOS = 5_000_000_000L;

    /** The two scales are announced this far on either side of where they meet, so that noise does not announce them. */
    private static final double HYSTERESIS_DB = 0.1;

    private final CueMode mode;
    private final CueTarget target;
    private final Listener listener = new Listener();
    private final Tuning tuning = new Tuning();
    private final MomentKeeper keeper = new MomentKeeper();

    private Seek seek = Seek.PEAK;
    private long heard;
    private boolean fine = true;
    private boolean done;
    private long movedAtNanos;
    private Aim aim = Aim.SILENCE;

    Conductor(CueMode mode, CueTarget target) {
        this.mode = mode;
        this.target = target;
    }

    @Override
    public void take(SessionRecord record) {
        keeper.take(record);
        Moment moment = keeper.moment();
        moment.called().filter(called -> called.number() > heard).ifPresent(this::play);
        if (moment.seek() != seek) {
            seek = moment.seek();
            announcement(seek).ifPresent(target::say);
        }
        record.tellFamily(listener);
        if (silences(moment.act())) {
            aim(aim.silenced());
        }
    }

    private void play(Called called) {
        heard = called.number();
        target.play(Event.of(called.call()));
    }

    /** No tone of a reading that cannot be trusted, or of an old one. */
    private static boolean silences(Act act) {
        return act == Act.OVERLOAD || act == Act.NO_LINK || act == Act.END;
    }

    private void aim(Aim newAim) {
        if (!newAim.equals(aim)) {
            aim = newAim;
            target.aim(newAim);
        }
    }

    private void reading(ReadingTaken taken) {
        if (silences(keeper.moment().act())
                || !taken.reading().condition().isTrusted()
                || Double.isNaN(taken.smoothed())) {
            aim(aim.silenced());
            return;
        }
        Gate gate = gate(taken);
        aim(
                switch (seek) {
                    case PEAK, DIP -> distance(taken, gate);
                    case ZERO -> zero(taken, gate);
                });
    }

    /** The tone sounds while something moves, pings at rest, and is silent once the adjuster is recorded. */
    private Gate gate(ReadingTaken taken) {
        if (taken.trend() != Trend.STEADY) {
            movedAtNanos = taken.tNanos();
            done = false;
        }
        boolean resting = taken.tNanos() - movedAtNanos > REST_AFTER_NANOS;
        return done ? Gate.SHUT : resting ? Gate.PINGS : Gate.OPEN;
    }

    private Aim distance(ReadingTaken taken, Gate gate) {
        if (Double.isNaN(taken.ofBest())) {
            return aim;
        }
        if (tuning.follow(taken.best(), seek)) {
            target.play(Event.SHIFT);
        }
        double distanceDb = Tuning.distanceDb(taken, seek);
        announceScale(distanceDb);
        double hertz = PitchScale.hertz(tuning.bestHertz(), distanceDb);
        boolean offScale = gate == Gate.OPEN && hertz <= PitchScale.LOWEST_HERTZ;
        // While the reading climbs, the steady tone goes with it: a beat is for what lies below the best.
        return new Aim(hertz, offScale ? Gate.CHOPPED : gate, Math.max(hertz, tuning.bestHertz()), reference(gate));
    }

    private Aim zero(ReadingTaken taken, Gate gate) {
        double hertz = PitchScale.zeroHertz(tuning.ofSwing(taken.smoothed()));
        boolean negative = gate == Gate.OPEN && taken.smoothed() < 0;
        return new Aim(hertz, negative ? Gate.CHOPPED : gate, PitchScale.ZERO_HERTZ, reference(gate));
    }

    private Gate reference(Gate live) {
        return live != Gate.OPEN ? Gate.SHUT : mode == CueMode.BEAT ? Gate.OPEN : Gate.PINGS;
    }

    private void announceScale(double distanceDb) {
        double edge = PitchScale.FINE_WITHIN_DB + (fine ? HYSTERESIS_DB : -HYSTERESIS_DB);
        boolean nowFine = distanceDb < edge;
        if (nowFine != fine) {
            fine = nowFine;
            target.play(fine ? Event.FINE : Event.COARSE);
        }
    }

    private void begin(long tNanos) {
        tuning.restart();
        fine = true;
        done = false;
        movedAtNanos = tNanos;
        aim(aim.silenced());
    }

    private static Optional<String> announcement(Seek seek) {
        return switch (seek) {
            case PEAK -> Optional.empty();
            case DIP -> Optional.of(CuePhrase.DIP.of());
            case ZERO -> Optional.of(CuePhrase.ZERO.of());
        };
    }

    /** What each family of records does. */
    private final class Listener implements FamilyListener {

        @Override
        public void frame(Frame it) {
            if (it instanceof ReadingTaken taken) {
                reading(taken);
            }
        }

        @Override
        public void finding(Finding it) {
            done |= it instanceof Held;
        }

        @Override
        public void work(Work it) {
            if (it instanceof Adjuster adjuster && adjuster.action() == Adjuster.Action.BEGIN) {
                begin(it.tNanos());
            }
        }
    }
}

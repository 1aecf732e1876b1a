package org.slugpeak.cli.cue;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Manner;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.session.Work;

/**
 * Decides what is heard. Time comes only with the records, so a replayed session sounds as the live one did. One thread at a
 * time.
 */
final class Conductor implements RecordSink {

    /** An alarm that keeps coming sooner than this only wears the user down. */
    static final long ALARM_EVERY_NANOS = 10_000_000_000L;

    /** After so long without movement the tone gives way to pings. */
    static final long REST_AFTER_NANOS = 5_000_000_000L;

    /** The two scales are announced this far on either side of where they meet, so that noise does not announce them. */
    private static final double HYSTERESIS_DB = 0.1;

    private final CueMode mode;
    private final CueTarget target;
    private final Listener listener = new Listener();
    private final Tuning tuning = new Tuning();
    private final Map<Event, Long> lastAlarms = new EnumMap<>(Event.class);

    private Seek seek = Seek.PEAK;
    private boolean overloaded;
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
        record.matchFamily(listener);
    }

    private void aim(Aim newAim) {
        if (!newAim.equals(aim)) {
            aim = newAim;
            target.aim(newAim);
        }
    }

    private void alarm(Event event, long tNanos) {
        Long last = lastAlarms.get(event);
        if (last == null || tNanos - last >= ALARM_EVERY_NANOS) {
            lastAlarms.put(event, tNanos);
            target.play(event);
        }
    }

    private void reading(ReadingTaken taken) {
        if (overloaded) {
            alarm(Event.OVERLOAD, taken.tNanos());
        }
        if (overloaded || !taken.reading().condition().isTrusted() || Double.isNaN(taken.smoothed())) {
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
        if (tNanos > 0) {
            target.play(Event.BEGIN);
        }
    }

    private void announceSeek() {
        announcement(seek).ifPresent(target::say);
    }

    private static Optional<String> announcement(Seek seek) {
        return switch (seek) {
            case PEAK -> Optional.empty();
            case DIP -> Optional.of("dip: the tone rises as the reading falls; higher is nearer");
            case ZERO -> Optional.of("zero: higher is nearer; below zero the tone is chopped");
        };
    }

    /** What each kind of record does; whether anything is played is given only because the matcher wants a value. */
    private final class Listener implements Families<Boolean>, Frame.Matcher<Boolean>, Finding.Matcher<Boolean> {

        private final Cautions cautions = new Cautions();
        private final Requests requests = new Requests();

        @Override
        public Boolean other(SessionRecord it) {
            return false;
        }

        @Override
        public Boolean frame(Frame it) {
            return it.match(this);
        }

        @Override
        public Boolean finding(Finding it) {
            return it.match(this);
        }

        @Override
        public Boolean caution(Caution it) {
            return it.match(cautions);
        }

        @Override
        public Boolean request(Request it) {
            return it.match(requests);
        }

        @Override
        public Boolean sessionStart(SessionStart it) {
            seek = it.settings().seek();
            announceSeek();
            return true;
        }

        @Override
        public Boolean readingTaken(ReadingTaken it) {
            reading(it);
            return true;
        }

        @Override
        public Boolean sessionEnd(SessionEnd it) {
            aim(aim.silenced());
            return true;
        }

        @Override
        public Boolean passed(Passed it) {
            return play(Event.PASSED);
        }

        @Override
        public Boolean furtherPast(Finding.FurtherPast it) {
            return play(Event.PASSED);
        }

        @Override
        public Boolean returned(Returned it) {
            return play(Event.RETURNED);
        }

        @Override
        public Boolean held(Held it) {
            done = true;
            return play(Event.HELD);
        }

        @Override
        public Boolean twoPeaks(TwoPeaks it) {
            return look(it);
        }

        @Override
        public Boolean noPeak(NoPeak it) {
            return look(it);
        }

        @Override
        public Boolean hinted(Finding.Hinted it) {
            return it.manner() == Manner.VERDICT && look(it);
        }

        @Override
        public Boolean guard(Guard it) {
            return play(Event.LOOK);
        }

        @Override
        public Boolean work(Work it) {
            if (it instanceof Adjuster adjuster && adjuster.action() == Adjuster.Action.BEGIN) {
                begin(it.tNanos());
            }
            return it.manner() == Manner.ALARM && play(Event.LOOK);
        }

        @Override
        public Boolean link(Link it) {
            return it instanceof Link.Changed changed && linked(changed.state());
        }

        private boolean linked(Link.State state) {
            if (state == Link.State.RESUMED) {
                return play(Event.LINK_BACK);
            }
            aim(aim.silenced());
            return play(Event.LINK_LOST);
        }

        @Override
        public Boolean said(Said it) {
            if (it instanceof Said.Command given
                    && given.instruction() instanceof Instruction.Find wanted
                    && wanted.seek() != seek) {
                seek = wanted.seek();
                announceSeek();
            }
            return true;
        }
    }

    private boolean play(Event event) {
        target.play(event);
        return true;
    }

    private boolean look(SessionRecord it) {
        alarm(Event.LOOK, it.tNanos());
        return true;
    }

    /** What is heard of the signal. */
    private final class Cautions implements Caution.Matcher<Boolean> {

        @Override
        public Boolean overload(Overload it) {
            overloaded = true;
            alarm(Event.OVERLOAD, it.tNanos());
            aim(aim.silenced());
            return true;
        }

        @Override
        public Boolean overloadCleared(OverloadCleared it) {
            overloaded = false;
            return true;
        }

        @Override
        public Boolean weak(Weak it) {
            return look(it);
        }

        @Override
        public Boolean drift(Drift it) {
            return false;
        }

        @Override
        public Boolean settled(Caution.Settled it) {
            return false;
        }

        @Override
        public Boolean suspected(Caution.Suspected it) {
            return play(Event.LOOK);
        }

        @Override
        public Boolean noLongerSuspected(Caution.NoLongerSuspected it) {
            return false;
        }

        @Override
        public Boolean widePeak(Caution.WidePeak it) {
            return false;
        }

        @Override
        public Boolean restMissing(Caution.RestMissing it) {
            return false;
        }

        @Override
        public Boolean slowReadings(Caution.SlowReadings it) {
            return false;
        }

        @Override
        public Boolean checked(Caution.Checked it) {
            return false;
        }
    }

    /** What asks for something must be read by the eyes; what begins an adjuster or follows its end has been heard already. */
    private final class Requests implements Request.Matcher<Boolean> {

        @Override
        public Boolean asked(Request.Asked it) {
            return play(Event.LOOK);
        }

        @Override
        public Boolean cutGenerator(Request.CutGenerator it) {
            return play(Event.LOOK);
        }

        @Override
        public Boolean generatorChanged(Request.GeneratorChanged it) {
            return false;
        }

        @Override
        public Boolean generatorUnchanged(Request.GeneratorUnchanged it) {
            return false;
        }

        @Override
        public Boolean checkOver(Request.CheckOver it) {
            return play(Event.BEGIN);
        }

        @Override
        public Boolean checkDropped(Request.CheckDropped it) {
            return play(Event.LOOK);
        }

        @Override
        public Boolean setUp(Request.SetUp it) {
            return play(Event.LOOK);
        }

        @Override
        public Boolean undamp(Request.Undamp it) {
            return play(Event.LOOK);
        }

        @Override
        public Boolean turn(Request.Turn it) {
            return false;
        }

        @Override
        public Boolean handsOff(Request.HandsOff it) {
            return false;
        }

        @Override
        public Boolean setGenerator(Request.SetGenerator it) {
            return false;
        }
    }
}

package org.slugpeak.cli.cue;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.cli.words.CuePhrase;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.FamilyListener;
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
        record.tellFamily(listener);
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
            case DIP -> Optional.of(CuePhrase.DIP.of());
            case ZERO -> Optional.of(CuePhrase.ZERO.of());
        };
    }

    private void look(SessionRecord it) {
        alarm(Event.LOOK, it.tNanos());
    }

    /** What each family of records does. */
    private final class Listener implements FamilyListener, Frame.Matcher<Runnable> {

        private final Findings findings = new Findings();
        private final Cautions cautions = new Cautions();
        private final RequestCues requests = new RequestCues();

        @Override
        public void frame(Frame it) {
            it.match(this).run();
        }

        @Override
        public void finding(Finding it) {
            it.match(findings).run();
        }

        @Override
        public void caution(Caution it) {
            it.match(cautions).run();
        }

        @Override
        public void request(Request it) {
            it.match(requests).ifPresent(target::play);
        }

        @Override
        public Runnable sessionStart(SessionStart it) {
            return () -> {
                seek = it.settings().seek();
                announceSeek();
            };
        }

        @Override
        public Runnable readingTaken(ReadingTaken it) {
            return () -> reading(it);
        }

        @Override
        public Runnable sessionEnd(SessionEnd it) {
            return () -> aim(aim.silenced());
        }

        @Override
        public void guard(Guard it) {
            target.play(Event.LOOK);
        }

        @Override
        public void work(Work it) {
            if (it instanceof Adjuster adjuster && adjuster.action() == Adjuster.Action.BEGIN) {
                begin(it.tNanos());
            }
            if (it.manner() == Manner.ALARM) {
                target.play(Event.LOOK);
            }
        }

        @Override
        public void link(Link it) {
            if (it instanceof Link.Changed changed) {
                linked(changed.state());
            }
        }

        private void linked(Link.State state) {
            if (state == Link.State.RESUMED) {
                target.play(Event.LINK_BACK);
            } else {
                aim(aim.silenced());
                target.play(Event.LINK_LOST);
            }
        }

        @Override
        public void said(Said it) {
            if (it instanceof Said.Command given
                    && given.instruction() instanceof Instruction.Find wanted
                    && wanted.seek() != seek) {
                seek = wanted.seek();
                announceSeek();
            }
        }
    }

    /** What is done about each finding. */
    private final class Findings implements Finding.Matcher<Runnable> {

        @Override
        public Runnable passed(Passed it) {
            return () -> target.play(Event.PASSED);
        }

        @Override
        public Runnable furtherPast(Finding.FurtherPast it) {
            return () -> target.play(Event.PASSED);
        }

        @Override
        public Runnable returned(Returned it) {
            return () -> target.play(Event.RETURNED);
        }

        @Override
        public Runnable held(Held it) {
            return () -> {
                done = true;
                target.play(Event.HELD);
            };
        }

        @Override
        public Runnable twoPeaks(TwoPeaks it) {
            return () -> look(it);
        }

        @Override
        public Runnable noPeak(NoPeak it) {
            return () -> look(it);
        }

        @Override
        public Runnable hinted(Finding.Hinted it) {
            return it.manner() == Manner.VERDICT ? () -> look(it) : () -> {};
        }
    }

    /** What is done about each caution. */
    private final class Cautions implements Caution.Matcher<Runnable> {

        @Override
        public Runnable overload(Overload it) {
            return () -> {
                overloaded = true;
                alarm(Event.OVERLOAD, it.tNanos());
                aim(aim.silenced());
            };
        }

        @Override
        public Runnable overloadCleared(OverloadCleared it) {
            return () -> overloaded = false;
        }

        @Override
        public Runnable weak(Weak it) {
            return () -> look(it);
        }

        @Override
        public Runnable suspected(Caution.Suspected it) {
            return () -> target.play(Event.LOOK);
        }

        @Override
        public Runnable drift(Drift it) {
            return () -> {};
        }

        @Override
        public Runnable settled(Caution.Settled it) {
            return () -> {};
        }

        @Override
        public Runnable noLongerSuspected(Caution.NoLongerSuspected it) {
            return () -> {};
        }

        @Override
        public Runnable widePeak(Caution.WidePeak it) {
            return () -> {};
        }

        @Override
        public Runnable restMissing(Caution.RestMissing it) {
            return () -> {};
        }

        @Override
        public Runnable slowReadings(Caution.SlowReadings it) {
            return () -> {};
        }

        @Override
        public Runnable checked(Caution.Checked it) {
            return () -> {};
        }
    }
}

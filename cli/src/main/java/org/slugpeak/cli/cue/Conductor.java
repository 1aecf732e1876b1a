package org.slugpeak.cli.cue;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Topics;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Mark;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SeekCommand;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.steps.StepsBack;

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

    /** Advice that asks for something, which the eyes must read. */
    private static final Set<String> LOOKED_AT = Set.of(
            "ask",
            "cut-generator",
            "check-dropped",
            Topics.SET_UP,
            Topics.DAMPING,
            Topics.GUARD,
            Topics.HAND_EFFECT,
            Topics.PLAN_OVER);

    /** So begin the topics of suspicions. */
    private static final String POSSIBLE = "possible-";

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
        record.match(listener);
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

    /** What each kind of record does; a value is returned only because the matcher wants one. */
    private final class Listener implements SessionRecord.Matcher<Boolean> {

        @Override
        public Boolean sessionStart(SessionStart it) {
            seek = it.settings().seek();
            announceSeek();
            return true;
        }

        @Override
        public Boolean passed(Passed it) {
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

        private boolean play(Event event) {
            target.play(event);
            return true;
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
        public Boolean weak(Weak it) {
            return look(it);
        }

        @Override
        public Boolean advice(Advice it) {
            if (it.topic().equals("check-over")) {
                return play(Event.BEGIN);
            }
            if (it.topic().equals("wrong-way")) {
                return look(it);
            }
            if (it.topic().equals(StepsBack.TOPIC)) {
                return play(Event.PASSED);
            }
            return wantsALook(it.topic()) && play(Event.LOOK);
        }

        /** What begins an adjuster or follows its end has been heard already. */
        private static boolean wantsALook(String topic) {
            return LOOKED_AT.contains(topic) || topic.startsWith(POSSIBLE);
        }

        private boolean look(SessionRecord it) {
            alarm(Event.LOOK, it.tNanos());
            return true;
        }

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
        public Boolean link(Link it) {
            if (it.state() == Link.State.RESUMED) {
                return play(Event.LINK_BACK);
            }
            aim(aim.silenced());
            return play(Event.LINK_LOST);
        }

        @Override
        public Boolean adjuster(Adjuster it) {
            if (it.action() == Adjuster.Action.BEGIN) {
                begin(it.tNanos());
            }
            return true;
        }

        @Override
        public Boolean readingTaken(ReadingTaken it) {
            reading(it);
            return true;
        }

        @Override
        public Boolean drift(Drift it) {
            return false;
        }

        @Override
        public Boolean mark(Mark it) {
            SeekCommand.parse(it.text()).filter(wanted -> wanted != seek).ifPresent(wanted -> {
                seek = wanted;
                announceSeek();
            });
            return true;
        }

        @Override
        public Boolean sessionEnd(SessionEnd it) {
            aim(aim.silenced());
            return true;
        }
    }
}

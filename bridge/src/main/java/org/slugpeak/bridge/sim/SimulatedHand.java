package org.slugpeak.bridge.sim;

import java.util.Optional;
import java.util.SplittableRandom;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.receiver.Backlash;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.TwoPeaks;

/**
 * A hand with a trimming tool. It knows nothing of the circuit: it starts one way, and obeys what it hears after its reaction
 * time. After the word to stop it listens to the two tones, and creeps on while they beat. One thread at a time.
 */
final class SimulatedHand implements AdjusterChore.Turner {

    /** What the hand does at present. */
    private enum Doing {
        NOTHING,
        SEEKING,
        RETURNING,
        CREEPING,
        WAITING,
        LEAVING
    }

    /** How long it tries before it gives an adjuster up. */
    private static final double PATIENCE_SECONDS = 45;

    /** How long it turns back, or waits at the best, without hearing a verdict before it turns again; longer where it turns slower. */
    private static final double LOST_SECONDS = 7;
    /** A hand that goes the wrong way and did not hear it looks up after a while. */
    private static final double LOOKS_SECONDS = 2;

    /** The level watch judges a turn within a second. */
    private static final long JUDGING_NANOS = 1_000_000_000L;

    private static final double MOST_SLOWER = 2.5;

    /** Whoever has passed a zero comes back more slowly each time. */
    private static final double SLOWER_AT_ZERO = 1.6;

    private static final double MOST_SLOWER_AT_ZERO = 10;

    private final HandModel usual;
    private final SplittableRandom random;

    private Doing doing = Doing.NOTHING;
    private Optional<Adjustable> part = Optional.empty();
    private HandModel model;
    private double slower = 1;
    private Reach reach = Reach.UNLIMITED;
    private Backlash slug = new Backlash(0, 0);
    private int direction = 1;
    private int lastMoved = 1;
    private final BeatEar ear = new BeatEar();
    private double owedDegrees;
    private long beganNanos;
    private long turnedNanos;
    private long lastNanos;
    private long pausedFromNanos;
    private long pausedUntilNanos;
    private boolean holdsStill;
    private Optional<Intention> intention = Optional.empty();
    private boolean finished = true;
    /** The word on the screen: it falls when the reading rises. */
    private boolean otherWayStands;

    /** Something it will do when its reaction time is over. */
    private record Intention(long atNanos, Runnable what) {}

    SimulatedHand(HandModel usual, SplittableRandom random) {
        this.usual = usual;
        this.model = usual;
        this.random = random;
    }

    /** Puts the tool in and starts to turn. */
    @Override
    public void begin(Adjustable newPart, Bench bench) {
        long tNanos = bench.nowNanos();
        part = Optional.of(newPart);
        model = usual.at(newPart.widthTurns());
        slower = 1;
        reach = new Reach(newPart.reachTurns());
        int anyWay = random.nextBoolean() ? 1 : -1;
        direction = newPart.towards() == 0 ? anyWay : newPart.towards();
        lastMoved = direction;
        owedDegrees = 0;
        slug = new Backlash(model.backlashDegrees(), newPart.turns() * 360);
        beganNanos = tNanos;
        turnedNanos = tNanos;
        finished = false;
        otherWayStands = false;
        ear.begin();
        doing = Doing.WAITING;
        intend(tNanos, 0.2, () -> doing = Doing.SEEKING);
    }

    @Override
    public boolean isFinished() {
        return finished;
    }

    /** Holds still for a time, because the other hand is at the generator. */
    void pauseFrom(long fromNanos, long untilNanos) {
        pausedFromNanos = fromNanos;
        pausedUntilNanos = untilNanos;
        turnedNanos = Math.max(turnedNanos, untilNanos);
    }

    /** While a generator that obeys is turned nothing that is read counts: it holds still, and until the reading has been judged. */
    private void hearTurn(LevelCommand.Verb verb, long tNanos) {
        if (verb == LevelCommand.Verb.TURNING) {
            holdsStill = true;
        } else if (verb == LevelCommand.Verb.TURNED) {
            holdsStill = false;
            pauseFrom(tNanos, tNanos + JUDGING_NANOS);
        }
    }

    /** Hears a record at the simulation's time. */
    void hear(SessionRecord record, long tNanos) {
        if (record instanceof Said.Command given && given.instruction() instanceof Instruction.Find find) {
            ear.seek(find.seek());
        }
        if (record instanceof Said.Command given && given.instruction() instanceof Instruction.Level level) {
            hearTurn(level.command().verb(), tNanos);
        }
        if (finished || doing == Doing.LEAVING) {
            return;
        }
        record.tellFamily(new Hearing(tNanos));
    }

    /** What the hand acts upon. */
    private final class Hearing implements FamilyListener, Finding.Matcher<Runnable> {

        private final long tNanos;

        Hearing(long tNanos) {
            this.tNanos = tNanos;
        }

        @Override
        public void frame(Frame it) {
            if (it instanceof ReadingTaken taken) {
                listen(taken, tNanos);
            }
        }

        @Override
        public void finding(Finding it) {
            it.match(this).run();
        }

        @Override
        public Runnable passed(Passed it) {
            return () -> {
                if (ear.seeksZero()) {
                    slowDown(SLOWER_AT_ZERO, MOST_SLOWER_AT_ZERO);
                }
                intend(tNanos, 0, () -> turnBack(Doing.RETURNING));
            };
        }

        @Override
        public Runnable returned(Returned it) {
            return () -> intend(tNanos, 0, SimulatedHand.this::stop);
        }

        @Override
        public Runnable held(Held it) {
            return () -> leave(tNanos);
        }

        @Override
        public Runnable twoPeaks(TwoPeaks it) {
            return () -> {};
        }

        @Override
        public Runnable noPeak(NoPeak it) {
            return () -> SimulatedHand.this.noPeak(it.reason(), tNanos);
        }

        @Override
        public Runnable hinted(Finding.Hinted it) {
            if (it.hint() == Hint.WRONG_WAY) {
                return () -> wrongWay(tNanos);
            }
            boolean slower = it.hint() == Hint.TURN_SLOWER && reach.isLimited();
            return slower ? () -> slowDown(it.amount(), MOST_SLOWER) : () -> {};
        }

        @Override
        public Runnable furtherPast(Finding.FurtherPast it) {
            return () -> {};
        }
    }

    /** As told, but not to a standstill: so slow that a search would take for ever nobody turns. */
    private void slowDown(double factor, double most) {
        double wanted = Math.max(slower, Math.min(most, slower * factor));
        model = model.slowedBy(wanted / slower);
        slower = wanted;
    }

    private void stop() {
        doing = Doing.WAITING;
        ear.forget();
    }

    /** At the best nothing beats; as long as something does, it goes on by a hair, and turns round where that is worse. */
    private void listen(ReadingTaken reading, long tNanos) {
        otherWayStands &= reading.trend() != Trend.RISING;
        ear.hear(reading);
        if (intention.isPresent() || !isAtBest()) {
            return;
        }
        if (ear.takeWorse()) {
            intend(tNanos, 0, () -> turnBack(Doing.CREEPING));
        } else if (ear.beats() != (doing == Doing.CREEPING)) {
            intend(tNanos, 0, () -> doing = ear.beats() ? Doing.CREEPING : Doing.WAITING);
        }
    }

    private void leave(long tNanos) {
        doing = Doing.LEAVING;
        intend(tNanos, 0.3, this::letGo);
    }

    private void wrongWay(long tNanos) {
        if (part.filter(it -> it.towards() != 0).isPresent()) {
            return;
        }
        otherWayStands = true;
        if (doing == Doing.SEEKING || doing == Doing.RETURNING) {
            Doing turning = doing;
            intend(tNanos, 0, () -> turnBack(turning));
        }
    }

    /** Where there are stops the hand feels them, and goes on until it does: noise may look like the end of everything. */
    private void noPeak(NoPeakReason reason, long tNanos) {
        if (reach.isLimited()) {
            return;
        }
        if (reason == NoPeakReason.FLAT) {
            intend(tNanos, 0.5, this::letGo);
        } else if (reason == NoPeakReason.END_OF_TRAVEL) {
            intend(tNanos, 0, () -> turnBack(Doing.RETURNING));
        }
    }

    /** One tick: does what is due, and turns. */
    void step(long tNanos) {
        long passedNanos = tNanos - lastNanos;
        lastNanos = tNanos;
        if (finished) {
            return;
        }
        if (holdsStill) {
            beganNanos += passedNanos;
            turnedNanos += passedNanos;
            return;
        }
        if (intention.isPresent() && tNanos >= intention.get().atNanos()) {
            Runnable what = intention.get().what();
            intention = Optional.empty();
            turnedNanos = tNanos;
            what.run();
        }
        if (tNanos < pausedFromNanos || tNanos >= pausedUntilNanos) {
            loseWay(tNanos);
            turn(passedNanos / 1e9);
        }
    }

    private void loseWay(long tNanos) {
        if (tNanos - beganNanos > patienceSeconds() * 1e9) {
            letGo();
        } else if (otherWayStands && doing == Doing.SEEKING && tNanos - turnedNanos > LOOKS_SECONDS * 1e9) {
            turnedNanos = tNanos;
            turnBack(Doing.SEEKING);
        } else if (doing == Doing.RETURNING && tNanos - turnedNanos > LOST_SECONDS * slower * 1e9) {
            turnedNanos = tNanos;
            turnBack(Doing.RETURNING);
        } else if (isAtBest() && tNanos - turnedNanos > LOST_SECONDS * 1e9) {
            turnedNanos = tNanos;
            doing = Doing.RETURNING;
        }
    }

    /** Where there are stops it goes from one to the other as often as that takes. */
    private double patienceSeconds() {
        return PATIENCE_SECONDS + reach.degreesOfSearch() / model.seekDegreesPerSecond();
    }

    private boolean isAtBest() {
        return doing == Doing.WAITING || doing == Doing.CREEPING;
    }

    private void turn(double seconds) {
        double speed = switch (doing) {
            case SEEKING -> model.seekDegreesPerSecond();
            case RETURNING -> model.returnDegreesPerSecond();
            case CREEPING -> model.creepDegreesPerSecond();
            default -> 0;
        };
        owedDegrees += speed * seconds;
        if (speed > 0 && owedDegrees > model.slipDegrees() * random.nextDouble(0.3, 1.7)) {
            double before = slug.position();
            slug.move(direction * owedDegrees);
            lastMoved = slug.position() == before ? lastMoved : direction;
            owedDegrees = 0;
            follow();
        }
    }

    /** The adjuster follows the tool as far as it goes; at a stop the hand turns round, or gives up where it has been everywhere. */
    private void follow() {
        double turns = slug.position() / 360;
        part.ifPresent(it -> it.turnTo(turns));
        if (reach.isEnd(turns) && direction * turns > 0) {
            if (doing == Doing.SEEKING && reach.meets()) {
                letGo();
            } else {
                turnBack(doing);
            }
        }
    }

    /** Back is against the way the slug has turned last, however often it is said; a tool in its play has turned nothing. */
    private void turnBack(Doing next) {
        direction = -lastMoved;
        owedDegrees = 0;
        doing = next;
    }

    private void letGo() {
        doing = Doing.NOTHING;
        finished = true;
        intention = Optional.empty();
        part.ifPresent(it -> it.touch(false));
    }

    private void intend(long tNanos, double extraSeconds, Runnable what) {
        double seconds = extraSeconds + random.nextDouble(model.quickestSeconds(), model.slowestSeconds());
        intention = Optional.of(new Intention(tNanos + (long) (seconds * 1e9), what));
    }
}

package org.slugpeak.bridge.sim;

import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.rehearsal.PlannedScene;
import org.slugpeak.core.rehearsal.PlannedSet;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/**
 * Does at a set that was made up from a plan what the session asks for: clips and sets what a step wants, turns its adjuster, makes
 * the moves of the checks. A hand that does not find an adjuster tries again twice; then the rehearsal ends with a word. So it does
 * where nothing is asked for any more, so that every rehearsal ends. One thread at a time.
 */
final class RehearsalChore implements Chore {

    /** Time to put the tool in. */
    private static final double TOOL_SECONDS = 0.5;

    /** Time to set a knob. */
    private static final double KNOB_SECONDS = 0.7;

    /** How long the set is off while a hand is in it; nobody wants to watch the discharging. */
    private static final double OFF_SECONDS = 3;

    private static final int MOST_TRIES = 3;

    /** So often at the most the session may begin an adjuster again. */
    private static final int MOST_BEGUN = 6;

    /** After what was held the session compares the reading without the hand; by then it has said so. */
    private static final double SAID_SECONDS = 15;

    /** The session itself waits no longer than ten minutes for anything. */
    private static final double IDLE_SECONDS = 700;

    /** Nobody turns one adjuster for half an hour. */
    private static final double LONGEST_SECONDS = 1800;

    private record Due(long atNanos, Runnable what) {}

    private final PlannedSet set;
    private final SimulatedHand hand;
    private final RockingHands rocking;
    private final Checks checks;
    private final PlaceInPlan place;
    private final Queue<Due> due = new ArrayDeque<>();
    private final Queue<Instruction> sayings = new ArrayDeque<>();
    private Optional<PlanStep> atWork = Optional.empty();
    private int tries;
    private long busyNanos;
    private long begunNanos;
    private boolean gaveUp;
    private boolean over;

    RehearsalChore(PlannedSet set, SimulatedHand hand, RockingHands rocking) {
        this.set = set;
        this.hand = hand;
        this.rocking = rocking;
        this.place = new PlaceInPlan(set.scenes());
        this.checks = new Checks();
    }

    @Override
    public void begin(Bench bench, SourceListener listener) {
        PlannedScene first = set.scenes().get(0);
        arrange(first, bench);
        // Without a signal nobody sees what a reading without one is.
        set.makeHeard(wantedVolts(first));
        busyNanos = bench.nowNanos();
    }

    private void arrange(PlannedScene scene, Bench bench) {
        bench.turnMeterTo(scene.point().measurand());
        set.arrange(scene);
        set.setLevel(wantedVolts(scene));
        sayings.add(new Instruction.Level(LevelCommand.at(scene.point())));
    }

    private static double wantedVolts(PlannedScene scene) {
        MeterPoint usual = scene.point() == MeterPoint.VOICE_COIL ? MeterPoint.VOICE_COIL : MeterPoint.DETECTOR;
        double square = scene.step()
                .setup()
                .level()
                .map(level -> level.low() * level.high())
                .orElse(usual.lowVolts() * usual.highVolts());
        return Math.sqrt(square);
    }

    @Override
    public void hear(SessionRecord record, Bench bench) {
        checks.hear(record, this::atHand, place.imageHz(), bench);
        rocking.hear(record);
        record.tellFamily(new Hearing(bench));
    }

    private Adjustable atHand() {
        return atWork.flatMap(step -> set.knob(step.adjuster()))
                .or(() -> set.knob(set.scenes().get(0).step().adjuster()))
                .map(Adjustable::of)
                .orElseThrow();
    }

    /** What it acts upon. */
    private final class Hearing implements FamilyListener {

        private final Bench bench;

        Hearing(Bench bench) {
            this.bench = bench;
        }

        @Override
        public void work(Work it) {
            if (it instanceof Adjuster adjuster && adjuster.action() != Adjuster.Action.BEGIN) {
                rocking.stop();
                place.next();
                atWork = Optional.empty();
                tries = 0;
                busyNanos = bench.nowNanos();
            }
            if (it instanceof Work.RoundEnded ended) {
                place.roundEnded(ended);
            }
            over = over || it instanceof Work.PlanOver;
        }

        @Override
        public void guard(Guard it) {
            if (it instanceof Guard.ClampGainControl) {
                offFor(bench, set::clampGainControl);
            }
        }

        @Override
        public void request(Request it) {
            busyNanos = bench.nowNanos();
            if (it instanceof Request.SetUp asked) {
                prepare(asked.what(), bench);
            } else if (it instanceof Request.Undamp asked) {
                offFor(bench, () -> set.damp(asked.damping(), false));
            } else if (it instanceof Request.Turn asked) {
                begunNanos = atWork.isPresent() ? begunNanos : bench.nowNanos();
                atWork = Optional.of(asked.step());
                after(TOOL_SECONDS, bench, () -> turn(asked.step(), bench));
            }
        }
    }

    private void prepare(Preparation wanted, Bench bench) {
        Runnable doing = () -> {
            wanted.takesOff().ifPresent(it -> set.damp(it, false));
            wanted.putsOn().ifPresent(it -> set.damp(it, true));
            wanted.setup().flatMap(place::due).ifPresent(scene -> arrange(scene, bench));
        };
        if (wanted.isAtTerminals()) {
            offFor(bench, doing);
        } else {
            after(KNOB_SECONDS, bench, doing);
        }
    }

    private void offFor(Bench bench, Runnable doing) {
        after(KNOB_SECONDS, bench, () -> set.power(false));
        after(KNOB_SECONDS + OFF_SECONDS, bench, () -> {
            doing.run();
            set.power(true);
        });
    }

    private void after(double seconds, Bench bench, Runnable what) {
        due.add(new Due(bench.nowNanos() + (long) (seconds * 1e9), what));
    }

    private void turn(PlanStep step, Bench bench) {
        tries++;
        if (tries > MOST_BEGUN) {
            gaveUp = true;
            return;
        }
        // Switches that only a step's notes speak of, such as that of a crystal filter.
        Optional<PlannedScene> scene = place.at(step);
        scene.filter(it -> !set.isArrangedFor(it)).ifPresent(set::arrange);
        if (step.rock()) {
            scene.ifPresent(it -> rocking.begin(it, bench));
        } else {
            set.knob(step.adjuster())
                    .map(step.goal().isHeard() ? Adjustable::heard : Adjustable::of)
                    .ifPresent(part -> hand.begin(part, bench));
        }
    }

    @Override
    public boolean step(Bench bench, SourceListener listener) {
        while (!sayings.isEmpty()) {
            listener.command(sayings.remove());
        }
        checks.step(bench, listener);
        while (!due.isEmpty() && due.peek().atNanos() <= bench.nowNanos()) {
            due.remove().what().run();
        }
        rocking.step(bench);
        if (!over) {
            watch(bench, listener);
        }
        return over;
    }

    /** The hand has let go and the session has not called the adjuster done, or nothing happens at all. */
    private void watch(Bench bench, SourceListener listener) {
        boolean tooLong = atWork.isPresent() && (bench.nowNanos() - begunNanos) / 1e9 > LONGEST_SECONDS;
        if (gaveUp || tooLong) {
            endTrying(listener);
            return;
        }
        if (!isIdle()) {
            busyNanos = bench.nowNanos();
            return;
        }
        double seconds = (bench.nowNanos() - busyNanos) / 1e9;
        if (atWork.isPresent() && seconds > SAID_SECONDS) {
            if (tries < MOST_TRIES) {
                turn(atWork.get(), bench);
            } else {
                endTrying(listener);
            }
        } else if (seconds > IDLE_SECONDS) {
            end(listener, "nothing was asked for any more");
        }
    }

    private boolean isIdle() {
        return due.isEmpty() && hand.isFinished() && !rocking.isAtWork();
    }

    private void endTrying(SourceListener listener) {
        String adjuster = atWork.map(PlanStep::adjuster).orElse("");
        end(listener, "the hand did not find '" + adjuster + "' in " + (tries - (gaveUp ? 1 : 0)) + " tries");
    }

    private void end(SourceListener listener, String why) {
        listener.note("rehearsal ended: " + why);
        over = true;
    }
}

package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.receiver.Tarnfield;
import org.slugpeak.core.rehearsal.PlannedSet;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.word.Refused;

/**
 * A simulated receiver as a source of readings: addresses {@code sim} and {@code sim:NAME}. Time is the simulation's own;
 * a {@link Tempo} says how fast it runs. The hand that turns the slugs must hear the session's records: give every one of them
 * to {@link #hand()}.
 *
 * <p>The same name, seed and records give the same readings. One thread at a time.
 */
public final class SimSource implements ReadingSource {

    /** The bench whose set is made up from a plan, where there is one. */
    public static final String REHEARSAL = "plan";

    /** The bench whose set is in order. */
    public static final String ALIGNED = "aligned";

    private static final List<String> NAMES = List.of("tarnfield", "multimeter", "sound", "still", REHEARSAL, ALIGNED);
    private static final int ROUNDS = 2;

    private final Bench bench;
    private final Tempo pace;
    private final String setName;
    private final boolean madeUp;
    private boolean closed;

    SimSource(Bench bench, Tempo pace) {
        this(bench, pace, "Tarnfield 54A", false);
    }

    private SimSource(Bench bench, Tempo pace, String setName, boolean madeUp) {
        this.setName = setName;
        this.madeUp = madeUp;
        this.bench = bench;
        this.pace = pace;
    }

    /**
     * Whether a bench does what the session asks for, and nothing else.
     *
     * @param name of a bench, or of none
     * @return true where nobody turns a slug unasked
     */
    public static boolean obeys(String name) {
        return name.equals(REHEARSAL) || name.equals(ALIGNED);
    }

    /**
     * Opens a simulated bench: the invented set Tarnfield 54A, whose IF slugs a hand turns in two rounds, before an ADC board
     * ({@code tarnfield}), a multimeter ({@code multimeter}) or a sound card at the voice coil ({@code sound}); or nobody turns
     * anything ({@code still}); or the hand sets the generator as it is told ({@code plan}), the same with the IF in order
     * ({@code aligned}).
     *
     * @param name one of {@link #names()}; empty for the first
     * @param seed of hand, noise and meter; any number
     * @param pace how fast it runs
     * @return the source
     * @throws BadConfiguration if there is no bench of that name
     */
    public static SimSource open(String name, long seed, Tempo pace) throws BadConfiguration {
        String wanted = name.isEmpty() ? NAMES.get(0) : name;
        if (!NAMES.contains(wanted)) {
            throw new BadConfiguration(
                    "there is no simulated bench '" + wanted + "'; choose one of sim:" + String.join(", sim:", NAMES));
        }
        MeterModel meter = switch (wanted) {
            case "multimeter" -> MeterModel.MULTIMETER;
            case "sound" -> MeterModel.SOUND_CARD;
            default -> MeterModel.CONVERTER;
        };
        HandModel model = wanted.equals("multimeter") ? HandModel.PATIENT : HandModel.PRACTISED;
        SplittableRandom random = new SplittableRandom(seed);
        SimulatedReceiver receiver = new SimulatedReceiver(Tarnfield.design(), Set.of(), random.nextLong());
        Script.prepare(receiver, wanted.equals("sound"), Optional.empty());
        if (wanted.equals(ALIGNED)) {
            Script.align(receiver);
        }
        SimulatedMeter before = new SimulatedMeter(meter, random.split());
        SimulatedHand hand = new SimulatedHand(model, random.split());
        Script script = new Script(receiver, hand, new ArrayList<>(), Optional.empty(), Narration::name);
        List<Chore> chores = switch (wanted) {
            case "still" -> List.of(Chores.rest(Double.MAX_VALUE));
            case REHEARSAL, ALIGNED -> List.of(new ObedientChore(receiver));
            default -> script.watching(wanted.equals("sound")).rounds(ROUNDS).chores();
        };
        OtherHand other = new OtherHand(receiver, hand, random.split());
        return new SimSource(new Bench(receiver, before, hand, other, chores), pace);
    }

    /**
     * Opens a bench with a set that is made up from a plan, where a hand does what the session asks for.
     *
     * @param plan that is to be carried out
     * @param done adjusters that an earlier session has brought to their places
     * @param seed of what is out of alignment, of hand, noise and meter; any number
     * @param pace how fast it runs
     * @return the source; it ends by itself where the hand cannot go on
     * @throws BadConfiguration where a step of the plan cannot be played, with one line that names it
     */
    public static SimSource rehearsing(Plan plan, Set<String> done, long seed, Tempo pace) throws BadConfiguration {
        return rehearsing(made(plan, seed).inOrder(done::contains), plan.name(), seed, pace);
    }

    private static PlannedSet made(Plan plan, long seed) throws BadConfiguration {
        try {
            return PlannedSet.of(plan, seed);
        } catch (Refused e) {
            throw new BadConfiguration("plan " + plan.name() + " cannot be rehearsed: " + e.reason(), e);
        }
    }

    /**
     * Opens a bench with a set that is made up from a plan, where a hand does what a sheet asks for.
     *
     * @param plan of the set
     * @param inOrder whether the set is as after the work; else as before it
     * @param point where the meter stands
     * @param seed of what is out of alignment, of noise and meter; any number
     * @param pace how fast it runs
     * @return the source
     * @throws BadConfiguration where a step of the plan cannot be played, with one line that names it
     */
    public static SimSource measuring(Plan plan, boolean inOrder, MeterPoint point, long seed, Tempo pace)
            throws BadConfiguration {
        PlannedSet set = made(plan, seed);
        return measuring(inOrder ? set.inOrder(any -> true) : set, plan.name(), point, seed, pace);
    }

    /** The same with a set that somebody else looks into, too. */
    static SimSource measuring(PlannedSet set, String name, MeterPoint point, long seed, Tempo pace) {
        SplittableRandom random = new SplittableRandom(seed);
        SimulatedHand hand = new SimulatedHand(HandModel.PATIENT, random.split());
        OtherHand other = new OtherHand(set, hand, random.split());
        other.obeys(false);
        MeterModel meter = point == MeterPoint.VOICE_COIL ? MeterModel.SOUND_CARD : MeterModel.CONVERTER;
        Chore chore = new SheetChore(set);
        Bench bench = new Bench(set, new SimulatedMeter(meter, random.split()), hand, other, List.of(chore));
        return new SimSource(bench, pace, name, true);
    }

    /** The same with a set that somebody else looks into, too. */
    static SimSource rehearsing(PlannedSet set, String name, long seed, Tempo pace) {
        SplittableRandom random = new SplittableRandom(seed);
        boolean sound = set.scenes().get(0).point() == MeterPoint.VOICE_COIL;
        MeterModel meter = sound ? MeterModel.SOUND_CARD : MeterModel.CONVERTER;
        SimulatedHand hand = new SimulatedHand(sound ? HandModel.PATIENT : HandModel.PRACTISED, random.split());
        OtherHand other = new OtherHand(set, hand, random.split());
        Chore chore = new RehearsalChore(set, hand, new RockingHands(set, random.split()));
        Bench bench = new Bench(set, new SimulatedMeter(meter, random.split()), hand, other, List.of(chore));
        return new SimSource(bench, pace, name, true);
    }

    /**
     * The benches there are.
     *
     * @return names without the {@code sim:}, the usual one first
     */
    public static List<String> names() {
        return NAMES;
    }

    /**
     * The ear of the simulated hand.
     *
     * @return takes every record of the session, in the thread that polls
     */
    public RecordSink hand() {
        return bench;
    }

    @Override
    public Measurand measurand() {
        return bench.meter().measurand();
    }

    @Override
    public SourceDescription description() {
        return new SourceDescription.Simulation(setName, madeUp, bench.meter().kind());
    }

    @Override
    public Progress poll(long waitNanos, SourceListener listener) {
        if (closed || bench.isOver()) {
            return Progress.ENDED;
        }
        long dueNanos = pace.dueNanos();
        if (bench.nowNanos() + Bench.TICK_NANOS > dueNanos) {
            pace.await(bench.nowNanos() + Bench.TICK_NANOS - dueNanos, waitNanos);
            dueNanos = pace.dueNanos();
        }
        while (bench.nowNanos() + Bench.TICK_NANOS <= dueNanos && !bench.isOver()) {
            if (bench.tick(listener)) {
                return Progress.MORE;
            }
        }
        return bench.isOver() ? Progress.ENDED : Progress.IDLE;
    }

    @Override
    public void close() {
        closed = true;
    }
}

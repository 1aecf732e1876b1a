package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.receiver.Generator;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.receiver.Tarnfield;
import org.slugpeak.core.session.RecordSink;

/**
 * A simulated receiver as a source of readings: addresses {@code sim} and {@code sim:NAME}. Time is the simulation's own;
 * a {@link Pace} says how fast it runs. The hand that turns the slugs must hear the session's records: give every one of them
 * to {@link #hand()}.
 *
 * <p>The same name, seed and records give the same readings. One thread at a time.
 */
public final class SimSource implements ReadingSource {

    private static final List<String> NAMES = List.of("tarnfield", "multimeter", "sound", "still");
    private static final double FIRST_VOLTS = 440e-6;

    private final Bench bench;
    private final Pace pace;
    private boolean closed;

    private SimSource(Bench bench, Pace pace) {
        this.bench = bench;
        this.pace = pace;
    }

    /**
     * Opens a simulated bench.
     *
     * @param name one of {@link #names()}; empty for the first
     * @param seed of hand, noise and meter
     * @param pace how fast it runs
     * @return the source
     * @throws BadConfiguration if there is no bench of that name
     */
    public static SimSource open(String name, long seed, Pace pace) throws BadConfiguration {
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
        HandModel hand = wanted.equals("multimeter") ? HandModel.PATIENT : HandModel.PRACTISED;
        SplittableRandom random = new SplittableRandom(seed);
        SimulatedReceiver receiver = new SimulatedReceiver(Tarnfield.design(), Set.<Fault>of(), random.nextLong());
        receiver.feed(
                new Generator(Tarnfield.IF_HZ, FIRST_VOLTS, wanted.equals("sound"), Generator.Lead.CONVERTER_GRID));
        Bench bench = new Bench(
                receiver,
                new SimulatedMeter(meter, random.split()),
                new SimulatedHand(receiver, hand, random.split()),
                random.split(),
                wanted.equals("still") ? List.of(Chores.rest(1e6)) : rounds());
        return new SimSource(bench, pace);
    }

    private static List<Chore> rounds() {
        List<Chore> chores = new ArrayList<>();
        chores.add(Chores.rest(1));
        chores.add(Chores.say(LevelCommand.at(MeterPoint.DETECTOR).text()));
        chores.add(new CheckChore(CheckKind.REST));
        chores.add(new CheckChore(CheckKind.LEVEL));
        for (int round = 1; round <= 2; round++) {
            for (Part part : List.of(Part.T2_TOP, Part.T2_BOTTOM, Part.T1_TOP, Part.T1_BOTTOM)) {
                chores.add(Chores.peak(part));
                chores.add(Chores.rest(1));
            }
        }
        return chores;
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
    public String description() {
        return "simulated Tarnfield 54A, " + bench.meter().name();
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

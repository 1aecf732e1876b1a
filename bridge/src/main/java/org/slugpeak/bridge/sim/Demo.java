package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.receiver.IfPerformance;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.receiver.Tarnfield;

/**
 * A demonstration: the whole IF alignment of the invented set Tarnfield 54A. Its source says each step in a line (as notes),
 * begins each adjuster, and ends; everything else is the ordinary way of a reading. Give all records of the session to the
 * source's {@link SimSource#hand()}.
 *
 * <p>The same settings play the same demonstration. One thread at a time.
 */
public final class Demo {

    private final DemoSettings settings;
    private final SimulatedReceiver receiver;
    private final KeyHand keys;
    private final List<DemoOutcome.Step> steps = new ArrayList<>();
    private final IfPerformance before;
    private final Bench bench;
    private final SimSource source;

    private Demo(DemoSettings settings, Tempo pace, Narration.Narrator narrator, boolean everything) {
        this.settings = settings;
        SplittableRandom random = new SplittableRandom(settings.seed());
        Set<Fault> faults = settings.fault().map(Set::of).orElse(Set.of());
        receiver = new SimulatedReceiver(Tarnfield.design(), faults, random.nextLong());
        Script.prepare(receiver, false, settings.fault());
        before = receiver.performance();
        keys = new KeyHand();
        SimulatedHand hand = new SimulatedHand(HandModel.PRACTISED, random.split());
        OtherHand other = new OtherHand(receiver, hand, random.split());
        MeterModel meter =
                settings.fault().equals(Optional.of(Fault.LOADING)) ? MeterModel.LOADING : MeterModel.CONVERTER;
        AdjusterChore.Turner turner = settings.turner() == DemoSettings.Turner.KEYS ? keys : hand;
        Script script = new Script(receiver, turner, steps, settings.fault(), narrator);
        if (everything) {
            script.everything();
        } else {
            script.forFault();
        }
        bench = new Bench(receiver, new SimulatedMeter(meter, random.split()), hand, other, script.chores());
        source = new SimSource(bench, pace);
    }

    /**
     * Sets a demonstration up. With a fault the operator also makes the checks of a suspicious one, as far
     * as they can meet that fault.
     *
     * @param settings how it is played
     * @param pace how fast it runs
     * @param narrator has the words for what is said at each step
     * @return a demonstration at its beginning
     */
    public static Demo create(DemoSettings settings, Tempo pace, Narration.Narrator narrator) {
        return new Demo(settings, pace, narrator, false);
    }

    /** With every check there is, for the table of faults. */
    static Demo withEverything(DemoSettings settings) {
        return new Demo(settings, Tempo.unlimited(), Narration::name, true);
    }

    /**
     * Where its readings come from.
     *
     * @return the source; it ends by itself
     */
    public SimSource source() {
        return source;
    }

    /**
     * Turns the tool, where the user turns by keys; otherwise nothing happens.
     *
     * @param degrees positive is inwards
     */
    public void turn(double degrees) {
        keys.turn(degrees);
    }

    /** Takes the tool out, where the user turns by keys: the adjuster is done. */
    public void next() {
        keys.next();
    }

    /**
     * What it came to so far.
     *
     * @return as the simulation knows it
     */
    public DemoOutcome outcome() {
        return new DemoOutcome(
                steps, before, receiver.performance(), receiver.lossDb(), settings.fault(), bench.suspicions());
    }
}

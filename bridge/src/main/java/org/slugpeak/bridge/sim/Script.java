package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.receiver.Generator;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.receiver.Tarnfield;

/** What the operator of the Tarnfield bench does, chore by chore. One thread at a time. */
final class Script {

    private static final double RF_RISE_VOLTS = 0.9;
    private static final List<Part> FROM_THE_DETECTOR =
            List.of(Part.T2_TOP, Part.T2_BOTTOM, Part.T1_TOP, Part.T1_BOTTOM);

    private final List<Chore> chores = new ArrayList<>();
    private final SimulatedReceiver receiver;
    private final AdjusterChore.Turner turner;
    private final List<DemoOutcome.Step> steps;
    private final Optional<Fault> fault;
    private final Narration.Narrator narrator;

    Script(
            SimulatedReceiver receiver,
            AdjusterChore.Turner turner,
            List<DemoOutcome.Step> steps,
            Optional<Fault> fault,
            Narration.Narrator narrator) {
        this.receiver = receiver;
        this.turner = turner;
        this.steps = steps;
        this.fault = fault;
        this.narrator = narrator;
    }

    List<Chore> chores() {
        return List.copyOf(chores);
    }

    /** Puts the bench into the state in which the work begins: the generator set for the working voltage. */
    static void prepare(SimulatedReceiver receiver, boolean modulated, Optional<Fault> fault) {
        double frequencyHz = fault.equals(Optional.of(Fault.WRONG_IF)) ? 465e3 : Tarnfield.IF_HZ;
        receiver.feed(new Generator(frequencyHz, 0, modulated, Generator.Lead.CONVERTER_GRID));
        if (fault.equals(Optional.of(Fault.SLUG_END))) {
            receiver.set(Part.T1_TOP, Tarnfield.slugLaw().secondPositionTurns() + 0.7);
        }
        double volts = receiver.generatorVoltsFor(Tarnfield.WORKING_VOLTS);
        receiver.feed(receiver.generator().withVolts(fault.equals(Optional.of(Fault.STRONG)) ? 5 * volts : volts));
    }

    /** Puts the IF slugs where they belong, with the generator turned down for the working voltage. */
    static void align(SimulatedReceiver receiver) {
        FROM_THE_DETECTOR.forEach(part -> receiver.set(part, 0));
        double volts = receiver.generatorVoltsFor(Tarnfield.WORKING_VOLTS);
        receiver.feed(receiver.generator().withVolts(volts));
    }

    /** What a watcher needs to see: where the meter is, and a pause. */
    Script watching(boolean voiceCoil) {
        MeterPoint point = voiceCoil ? MeterPoint.VOICE_COIL : MeterPoint.DETECTOR;
        chores.add(Chores.command(LevelCommand.at(point)));
        chores.add(Chores.rest(1));
        return this;
    }

    /** So many times the four slugs, without a word. */
    Script rounds(int rounds) {
        for (int round = 0; round < rounds; round++) {
            for (Part part : FROM_THE_DETECTOR) {
                adjust(part);
            }
        }
        return this;
    }

    /** The whole job with every check there is. */
    Script everything() {
        return opening().waiting().suspicious().ifAlignment().closing().radioFrequency();
    }

    /** A usual job, and the checks that can meet the seeded fault. */
    Script forFault() {
        opening();
        if (is(Fault.MICA)) {
            waiting();
        }
        if (fault.isPresent()) {
            suspicious();
        }
        ifAlignment();
        closing();
        if (is(Fault.PADDER) || is(Fault.HARMONIC) || is(Fault.IMAGE)) {
            radioFrequency();
        }
        return this;
    }

    /** Where the meter is, what it shows without a signal, and whether it follows the generator. */
    Script opening() {
        say(Narration.BENCH);
        chores.add(Chores.command(LevelCommand.at(MeterPoint.DETECTOR)));
        say(Narration.REST_FIRST);
        check(CheckKind.REST);
        say(Narration.LEVEL_CHECK);
        check(CheckKind.LEVEL);
        return this;
    }

    /** The checks before any slug is turned that only a suspicious operator makes. */
    Script suspicious() {
        check(CheckKind.LOADING);
        check(CheckKind.OTHER_IF);
        effect(Part.T2_TOP);
        say(Narration.OUTWARDS);
        chores.add(new SweepChore(receiver, Part.T1_TOP));
        return this;
    }

    /** Two rounds of the four slugs. */
    Script ifAlignment() {
        say(Narration.FROM_THE_DETECTOR);
        adjust(Part.T2_TOP);
        say(Narration.ITS_BOTTOM_SLUG);
        adjust(Part.T2_BOTTOM);
        say(Narration.FIRST_TOP);
        adjust(Part.T1_TOP);
        say(Narration.FIRST_BOTTOM);
        adjust(Part.T1_BOTTOM);
        say(Narration.ROUND_TWO);
        return rounds(1);
    }

    /** Hands off for two minutes: does the level stay? */
    Script waiting() {
        say(Narration.HANDS_OFF);
        chores.add(Chores.rest(125));
        return this;
    }

    /** What tells a good response from a sharp one. */
    Script closing() {
        say(Narration.SKIRTS);
        check(CheckKind.SKIRTS);
        say(Narration.DONE);
        return this;
    }

    /** Oscillator checks on medium and short wave. An aligned set has more noise: what it reads without a signal is looked at again. */
    Script radioFrequency() {
        say(Narration.TO_THE_AERIAL);
        receive(1400e3, is(Fault.HARMONIC) ? 700e3 : 1400e3);
        check(CheckKind.REST);
        check(CheckKind.HARMONIC);
        say(Narration.LOW_END);
        receive(600e3, 600e3);
        effect(Part.C3);
        adjust(Part.C3);
        say(Narration.SHORT_WAVE);
        chores.add(Chores.set(bench -> receiver.set(Part.C5, is(Fault.IMAGE) ? imageTurns() : 0)));
        receive(16e6, 16e6);
        check(CheckKind.IMAGE);
        return this;
    }

    private boolean is(Fault wanted) {
        return fault.equals(Optional.of(wanted));
    }

    private static double imageTurns() {
        double ratio = (16e6 + Tarnfield.IF_HZ) / (16e6 - Tarnfield.IF_HZ);
        double farad = Tarnfield.design().front().shortWaveFarad() * (ratio * ratio - 1);
        return farad / Tarnfield.design().front().trimmerFaradPerTurn();
    }

    /** The operator tunes to the generator and sets it for a good reading. */
    private void receive(double dialHz, double generatorHz) {
        chores.add(Chores.set(bench -> {
            receiver.set(Part.C1, 0);
            receiver.set(Part.C2, 0);
            receiver.set(Part.C3, dialHz < 1e6 ? -0.12 : 0);
            receiver.tune(dialHz);
            Generator silent = new Generator(generatorHz, 0, false, Generator.Lead.AERIAL);
            receiver.feed(silent);
            receiver.feed(silent.withVolts(receiver.generatorVoltsFor(RF_RISE_VOLTS)));
        }));
        chores.add(Chores.begin("dial " + Math.round(dialHz / 1e3) + " kHz"));
        chores.add(Chores.rest(1));
    }

    private void adjust(Part part) {
        chores.add(new AdjusterChore(receiver, part, turner, steps));
        chores.add(Chores.rest(0.3));
    }

    private void effect(Part part) {
        chores.add(Chores.begin(part.label()));
        chores.add(new CheckChore(CheckKind.EFFECT, Adjustable.of(receiver, part), 2 * Tarnfield.IF_HZ));
    }

    private void check(CheckKind kind) {
        chores.add(new CheckChore(kind, Adjustable.of(receiver, Part.T2_TOP), 2 * Tarnfield.IF_HZ));
    }

    private void say(Narration step) {
        chores.add(Chores.say(narrator.say(step)));
    }
}

package org.slugpeak.bridge.generator;

import java.util.Optional;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.Carrier;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.GeneratorSetting;
import org.slugpeak.core.generator.Modulation;

/**
 * A signal generator that obeys: set line by line as its description says, and read back. What it cannot say is taken as it was
 * sent. Each call waits for the answers. One thread at a time.
 */
public final class DescribedGenerator {

    /** Generators round to their own steps; more than this share is another frequency. */
    private static final double SAME_SHARE = 1e-4;

    /** The coarsest attenuator's step. More is another level. */
    private static final double SAME_DB = 1;

    private GeneratorDescription description;
    private final GeneratorTalk talk;
    private final GeneratorDialogue dialogue;
    private Optional<GeneratorSetting> known = Optional.empty();
    private int openingsKnown;

    DescribedGenerator(GeneratorDescription description, Carrier carrier, Ticker ticker) {
        this.description = description;
        this.talk = new GeneratorTalk(carrier, ticker, description.talk().lineEnd());
        this.dialogue = new GeneratorDialogue(description, talk);
    }

    /**
     * Who it is.
     *
     * @return its own name, or where it has none that of its description
     */
    public String name() {
        return dialogue.name();
    }

    /**
     * What it can do.
     *
     * @return whether level, output and modulation are set from here, and how far it reaches
     */
    public GeneratorReach reach() {
        return description.reach();
    }

    /** Greets it and asks its name. */
    void greet() throws BridgeException {
        dialogue.greet();
        openingsKnown = talk.openings();
    }

    /** Asks how far it goes, where its description says how. */
    void askLimits() {
        boolean asks = description.frequency().limits().isPresent()
                || description.level().flatMap(NumberLines::limits).isPresent();
        if (asks) {
            description = description.within(
                    dialogue.limited(description.frequency()),
                    description.level().map(dialogue::limited));
            dialogue.sayGreeting();
        }
    }

    /** Whether the line is there. */
    boolean isLinked() {
        return talk.isLinked();
    }

    /** Waits until something happens on the line. */
    void await(long waitNanos) {
        talk.await(waitNanos);
    }

    /**
     * How it stands, as far as it can tell: what it cannot tell is as in the setting that is given.
     *
     * @param otherwise for what it cannot tell
     * @return the setting
     * @throws BridgeException where it does not answer
     */
    public GeneratorSetting asItStands(GeneratorSetting otherwise) throws BridgeException {
        GeneratorSetting stands = otherwise;
        if (description.frequency().readBack().isPresent()) {
            double number = dialogue.read(description.frequency().readBack().get());
            stands = stands.withFrequency(description.hertz() * number);
        }
        Optional<NumberLines.Question> level = description.level().flatMap(NumberLines::readBack);
        if (level.isPresent()) {
            stands = stands.withEmf(description.levelUnit().toEmfVolts(dialogue.read(level.get())));
        }
        Optional<SwitchLines.Question> output = description.output().flatMap(SwitchLines::readBack);
        return output.isPresent() ? stands.switched(dialogue.read(output.get())) : stands;
    }

    /**
     * Sets what differs from how it stood last.
     *
     * @param wanted how it is to stand
     * @return how it stands now: numbers as it reads them back
     * @throws BridgeException where it does not answer, has gone, or refuses, with one line that says what to do
     */
    public GeneratorSetting set(GeneratorSetting wanted) throws BridgeException {
        if (!talk.isLinked()) {
            known = Optional.empty();
            throw dialogue.silent();
        }
        if (talk.openings() != openingsKnown) {
            known = Optional.empty();
            greet();
        }
        Optional<GeneratorSetting> before = known;
        known = Optional.empty(); // until all of it was answered nobody knows
        if (!wanted.on()) {
            output(false, before);
        }
        double hz = frequency(wanted.frequencyHz(), before);
        Modulation modulation = modulation(wanted.modulation(), before);
        double emfVolts = level(wanted.emfVolts(), before);
        if (wanted.on()) {
            output(true, before);
        }
        GeneratorSetting real = new GeneratorSetting(hz, emfVolts, modulation, wanted.on());
        known = Optional.of(real);
        return real;
    }

    private double frequency(double wantedHz, Optional<GeneratorSetting> before) throws BridgeException {
        if (before.isPresent() && before.get().frequencyHz() == wantedHz) {
            return wantedHz;
        }
        double unit = description.hertz();
        GeneratorDialogue.Sameness same = (sent, back) -> Math.abs(sent - back) <= SAME_SHARE * Math.abs(sent);
        return unit * dialogue.set(description.frequency(), wantedHz / unit, same, description.frequencyUnit());
    }

    private double level(double emfVolts, Optional<GeneratorSetting> before) throws BridgeException {
        if (description.level().isEmpty() || Double.isNaN(emfVolts)) {
            return Double.NaN;
        }
        if (before.isPresent() && before.get().emfVolts() == emfVolts) {
            return emfVolts;
        }
        double number = description.levelUnit().ofEmfVolts(emfVolts);
        double back = dialogue.set(
                description.level().get(),
                number,
                this::isSameLevel,
                description.levelUnit().word());
        return description.levelUnit().toEmfVolts(back);
    }

    private boolean isSameLevel(double sent, double back) {
        double backEmfVolts = description.levelUnit().toEmfVolts(back);
        double sentEmfVolts = description.levelUnit().toEmfVolts(sent);
        return backEmfVolts > 0 && Decibels.apart(sentEmfVolts, backEmfVolts) <= SAME_DB;
    }

    private Modulation modulation(Modulation wanted, Optional<GeneratorSetting> before) throws BridgeException {
        if (description.modulation().isEmpty()) {
            return Modulation.NONE;
        }
        if (before.isEmpty() || !before.get().modulation().equals(wanted)) {
            SwitchLines lines = description.modulation().get();
            dialogue.orderAll(lines.lines(wanted.isOn()).stream()
                    .map(line -> line.replace("{tone}", whole(wanted.toneHz()))
                            .replace("{depth}", whole(wanted.depthPercent())))
                    .toList());
            dialogue.complain(wanted.isOn(), "takes no modulation");
        }
        return wanted;
    }

    private static String whole(double number) {
        return String.valueOf(Math.round(number));
    }

    private void output(boolean on, Optional<GeneratorSetting> before) throws BridgeException {
        boolean stands = before.isPresent() && before.get().on() == on;
        if (description.output().isPresent() && !stands) {
            dialogue.set(description.output().get(), on);
        }
    }

    /** Closes the line of one that was not set to anything. */
    void close() {
        dialogue.sayFarewell();
        talk.close();
    }

    /**
     * Leaves it with its output off and its own keys, and closes the line.
     *
     * @return one line where it may still give a signal; empty where it has said that it is off
     */
    public Optional<String> leave() {
        boolean interrupted = Thread.interrupted(); // the last words must get through
        Optional<String> problem = Optional.empty();
        try {
            dialogue.hurry();
            output(false, Optional.empty());
            if (description.output().isEmpty()) {
                problem = Optional.of(dialogue.who() + " cannot be switched off from here: switch it off by hand");
            }
        } catch (BridgeException e) {
            problem = Optional.of(dialogue.who() + " may still give a signal: switch it off by hand");
        } finally {
            close();
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
        return problem.map(SafeText::line);
    }
}

package org.slugpeak.cli.feed;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import java.util.function.Consumer;
import org.slugpeak.bridge.generator.DescribedGenerator;
import org.slugpeak.bridge.generator.RunningGenerator;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.open.OpenedSource;
import org.slugpeak.cli.open.SessionParts.OutputsOpening;
import org.slugpeak.cli.option.GeneratorOptions;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.GeneratorSetting;
import org.slugpeak.core.generator.Modulation;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.SessionRecord;

/**
 * Where the generator of a session sits: it is opened with the session's outputs, before a log is made, and left with them, first of all,
 * however the session ends. One thread: the session's.
 */
public final class GeneratorSeat {

    private final GeneratorOptions options;
    private final OptionalDouble usualEmfVolts;
    private final GeneratorMet met;
    private final Queue<Consumer<Feeder>> wishes = new ArrayDeque<>();
    private Optional<Feeder> feeder = Optional.empty();
    private Optional<String> unsure = Optional.empty();

    /**
     * A seat in which nobody sits yet.
     *
     * @param options where the generator is
     * @param usualEmfVolts with which level it begins where the user says none, volts EMF; empty leaves it as it stands
     * @param met hears what it can do as soon as it is open
     */
    public GeneratorSeat(GeneratorOptions options, OptionalDouble usualEmfVolts, GeneratorMet met) {
        this.met = met;
        this.options = options;
        this.usualEmfVolts = usualEmfVolts;
    }

    /** One in which somebody sits already. */
    static GeneratorSeat taken(Feeder by) {
        GeneratorSeat seat = new GeneratorSeat(new GeneratorOptions(), OptionalDouble.empty(), reach -> {});
        seat.feeder = Optional.of(by);
        return seat;
    }

    Optional<Feeder> feeder() {
        return feeder;
    }

    /**
     * The generator stands as a step of a plan wants it, as soon as it can.
     *
     * @param setup of the step
     */
    public void feed(Setup setup) {
        wish(it -> it.feed(setup));
    }

    /**
     * The generator gives this frequency, as soon as it can.
     *
     * @param hz Hz
     */
    public void tune(double hz) {
        wish(it -> it.frequency(hz));
    }

    void wish(Consumer<Feeder> wish) {
        wishes.add(wish);
    }

    /** Carries out what was wished since, and takes what was answered. */
    void serve(Analysis analysis, SessionControl control) {
        if (feeder.isEmpty()) {
            return;
        }
        for (Consumer<Feeder> wish = wishes.poll(); wish != null; wish = wishes.poll()) {
            wish.accept(feeder.get());
        }
        feeder.get().serve(analysis, control);
    }

    /**
     * Opens the generator, then the other outputs.
     *
     * @param others the outputs of the session
     * @return opens all of it, or leaves nothing open
     */
    public OutputsOpening before(OutputsOpening others) {
        return source -> open(others, source);
    }

    private List<SessionOutput> open(OutputsOpening others, OpenedSource source) throws BridgeException {
        DescribedGenerator generator = options.open();
        Optional<RunningGenerator> running = Optional.empty();
        boolean opened = false;
        try {
            met.reach(generator.reach());
            GeneratorSetting begins = begins(generator);
            running = Optional.of(new RunningGenerator(generator));
            feeder = Optional.of(new Feeder(running.get(), begins));
            List<SessionOutput> outputs = new ArrayList<>();
            outputs.add(leaving(running.get()));
            outputs.addAll(others.open(source));
            opened = true;
            return outputs;
        } finally {
            if (!opened) {
                unsure = running.isPresent() ? running.get().leave() : generator.leave();
            }
        }
    }

    private GeneratorSetting begins(DescribedGenerator generator) throws BridgeException {
        GeneratorReach reach = generator.reach();
        GeneratorSetting stood = generator
                .asItStands(new GeneratorSetting(1e6, Double.NaN, Modulation.NONE, false))
                .switched(false);
        OptionalDouble level = options.emfVolts().isPresent() ? options.emfVolts() : usualEmfVolts;
        return level.isPresent() && reach.setsLevel()
                ? stood.withEmf(reach.nearestEmfVolts(level.getAsDouble()))
                : stood;
    }

    private SessionOutput leaving(RunningGenerator running) {
        return new SessionOutput() {
            @Override
            public void take(SessionRecord record) {
                // Its wishes come from the guide, which hears what nobody else does.
            }

            @Override
            public void close() {
                unsure = running.leave();
            }
        };
    }

    /**
     * Why the generator ended the session.
     *
     * @return one line; empty where it did as it was told
     */
    public Optional<String> refusal() {
        return feeder.flatMap(Feeder::refusal);
    }

    /**
     * What is to be said when all is closed.
     *
     * @return one line where the generator may still give a signal
     */
    public Optional<String> unsure() {
        return unsure;
    }
}

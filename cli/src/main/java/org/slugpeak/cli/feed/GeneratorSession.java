package org.slugpeak.cli.feed;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.open.SessionParts;
import org.slugpeak.cli.open.SessionRunner;
import org.slugpeak.cli.option.GeneratorOptions;
import org.slugpeak.core.plan.Setup;

/** A session with a generator that is set by the tool, where the user names one; the same session without it where not. One thread. */
public final class GeneratorSession {

    private final Optional<GeneratorSeat> seat;

    /**
     * A session that has not begun.
     *
     * @param options whether there is a generator, and where
     * @param usualEmfVolts with which level it begins where the user says none, volts EMF; empty leaves it as it stands
     * @param met hears what the generator can do as soon as it is open
     */
    public GeneratorSession(GeneratorOptions options, OptionalDouble usualEmfVolts, GeneratorMet met) {
        seat = options.isGiven() ? Optional.of(new GeneratorSeat(options, usualEmfVolts, met)) : Optional.empty();
    }

    /** The generator stands as a step of a plan wants it, as soon as it can. */
    public void feed(Setup setup) {
        seat.ifPresent(it -> it.feed(setup));
    }

    /** The generator gives this frequency, Hz, as soon as it can. */
    public void tune(double hz) {
        seat.ifPresent(it -> it.tune(hz));
    }

    /**
     * Runs the session to its end; whatever that is, the generator's output is off then, or it is said that nobody knows.
     *
     * @param parts not yet open
     * @param err for what the generator leaves to be said
     * @return the exit code
     * @throws BridgeException where a part cannot be opened, the source fails for good, or the generator refuses
     */
    public int run(SessionParts parts, PrintWriter err) throws BridgeException {
        if (seat.isEmpty()) {
            return SessionRunner.run(parts);
        }
        GeneratorSeat taken = seat.get();
        int code;
        try {
            code = SessionRunner.run(new SessionParts(
                    parts.address(),
                    parts.source(),
                    taken.before(parts.outputs()),
                    parts.settings(),
                    new FedGuide(parts.guide(), taken),
                    parts.opening()));
        } finally {
            taken.unsure().ifPresent(err::println);
            err.flush();
        }
        if (taken.refusal().isPresent()) {
            throw new BadConfiguration(taken.refusal().get());
        }
        return code;
    }
}

package org.slugpeak.bridge.sim;

import java.util.OptionalDouble;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.receiver.Tarnfield;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/**
 * Does at the demonstration set what the session asks for: sets the generator to the frequency that it names, makes the moves of
 * its checks, until the work is through. One thread at a time.
 */
final class ObedientChore implements Chore {

    private static final long DIAL_NANOS = 700_000_000L;

    private final Adjustable atHand;
    private final Checks checks = new Checks();
    private OptionalDouble wantedHz = OptionalDouble.empty();
    private long wantedNanos;
    private boolean over;

    ObedientChore(SimulatedReceiver receiver) {
        this.atHand = Adjustable.of(receiver, Part.T2_TOP);
    }

    @Override
    public void begin(Bench bench, SourceListener listener) {
        listener.command(new Instruction.Level(LevelCommand.at(MeterPoint.DETECTOR)));
    }

    @Override
    public void hear(SessionRecord record, Bench bench) {
        checks.hear(record, () -> atHand, 2 * Tarnfield.IF_HZ, bench);
        if (record instanceof Request.SetGenerator set) {
            wantedHz = OptionalDouble.of(set.hz());
            wantedNanos = bench.nowNanos();
        }
        over = over || record instanceof CurveWork.CurveOver;
    }

    @Override
    public boolean step(Bench bench, SourceListener listener) {
        checks.step(bench, listener);
        if (wantedHz.isPresent() && bench.nowNanos() - wantedNanos >= DIAL_NANOS) {
            bench.set().feed(bench.set().generator().withFrequency(wantedHz.getAsDouble()));
            wantedHz = OptionalDouble.empty();
        }
        return over;
    }
}

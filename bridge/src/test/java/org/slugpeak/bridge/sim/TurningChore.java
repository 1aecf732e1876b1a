package org.slugpeak.bridge.sim;

import java.util.Arrays;
import java.util.Optional;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/** Does at the demonstration set what the session asks for, and turns each adjuster that it begins. One thread at a time. */
final class TurningChore implements Chore {

    private static final long TOOL_NANOS = 500_000_000L;

    private final SimulatedReceiver receiver;
    private final AdjusterChore.Turner turner;
    private final ObedientChore obedient;
    private Optional<Part> wanted = Optional.empty();
    private long wantedNanos;
    private boolean over;

    TurningChore(SimulatedReceiver receiver, AdjusterChore.Turner turner) {
        this.receiver = receiver;
        this.turner = turner;
        this.obedient = new ObedientChore(receiver);
    }

    @Override
    public void begin(Bench bench, SourceListener listener) {
        obedient.begin(bench, listener);
    }

    @Override
    public void hear(SessionRecord record, Bench bench) {
        obedient.hear(record, bench);
        if (record instanceof Adjuster adjuster && adjuster.action() == Adjuster.Action.BEGIN) {
            wanted = Arrays.stream(Part.values())
                    .filter(part -> part.label().equals(adjuster.name()))
                    .findFirst();
            wantedNanos = bench.nowNanos();
        }
        over = over || record instanceof Work.PlanOver;
    }

    @Override
    public boolean step(Bench bench, SourceListener listener) {
        obedient.step(bench, listener);
        if (wanted.isPresent() && bench.nowNanos() - wantedNanos >= TOOL_NANOS) {
            Part part = wanted.get();
            wanted = Optional.empty();
            receiver.hand(Optional.of(part));
            turner.begin(Adjustable.of(receiver, part), bench);
        }
        return over;
    }
}

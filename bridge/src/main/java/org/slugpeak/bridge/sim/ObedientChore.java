package org.slugpeak.bridge.sim;

import java.util.Arrays;
import java.util.Optional;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.SessionRecord;

/** Turns whatever adjuster the session begins, until the plan is through. One thread at a time. */
final class ObedientChore implements Chore {

    private static final long TOOL_NANOS = 500_000_000L;

    private final AdjusterChore.Turner turner;
    private Optional<Part> wanted = Optional.empty();
    private long wantedNanos;
    private boolean over;

    ObedientChore(AdjusterChore.Turner turner) {
        this.turner = turner;
    }

    @Override
    public void begin(Bench bench, SourceListener listener) {}

    @Override
    public void hear(SessionRecord record, Bench bench) {
        if (record instanceof Adjuster adjuster && adjuster.action() == Adjuster.Action.BEGIN) {
            wanted = part(adjuster.name());
            wantedNanos = bench.nowNanos();
        } else if (record instanceof Advice advice && advice.topic().equals("plan-over")) {
            over = true;
        }
    }

    private static Optional<Part> part(String name) {
        return Arrays.stream(Part.values())
                .filter(part -> part.label().equals(name))
                .findFirst();
    }

    @Override
    public boolean step(Bench bench, SourceListener listener) {
        if (wanted.isPresent() && bench.nowNanos() - wantedNanos >= TOOL_NANOS) {
            Part part = wanted.get();
            wanted = Optional.empty();
            bench.receiver().hand(Optional.of(part));
            turner.begin(part, bench);
        }
        return over;
    }
}

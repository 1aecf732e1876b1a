package org.slugpeak.bridge.sim;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;
import org.slugpeak.core.word.Coded;

/**
 * Does what the session asks for: turns the adjuster that it begins, sets the generator to the frequency that it names, makes
 * the moves of its checks, until the work is through. One thread at a time.
 */
final class ObedientChore implements Chore {

    private static final long TOOL_NANOS = 500_000_000L;
    private static final long DIAL_NANOS = 700_000_000L;

    private final AdjusterChore.Turner turner;
    private Optional<Part> wanted = Optional.empty();
    private OptionalDouble wantedHz = OptionalDouble.empty();
    private Optional<CheckChore> check = Optional.empty();
    private long wantedNanos;
    private boolean over;

    ObedientChore(AdjusterChore.Turner turner) {
        this.turner = turner;
    }

    @Override
    public void begin(Bench bench, SourceListener listener) {
        listener.command(new Instruction.Level(LevelCommand.at(MeterPoint.DETECTOR)));
    }

    @Override
    public void hear(SessionRecord record, Bench bench) {
        check.ifPresent(it -> it.hear(record, bench));
        record.tellFamily(new Hearing(bench));
    }

    /** What it acts upon. */
    private final class Hearing implements FamilyListener {

        private final Bench bench;

        Hearing(Bench bench) {
            this.bench = bench;
        }

        @Override
        public void work(Work it) {
            if (it instanceof Adjuster adjuster && adjuster.action() == Adjuster.Action.BEGIN) {
                wanted = part(adjuster.name());
                wantedNanos = bench.nowNanos();
            }
            over = over || it instanceof Work.PlanOver;
        }

        @Override
        public void curveWork(CurveWork it) {
            over = over || it instanceof CurveWork.CurveOver;
        }

        @Override
        public void request(Request it) {
            if (it instanceof Request.SetGenerator set) {
                wantedHz = OptionalDouble.of(set.hz());
                wantedNanos = bench.nowNanos();
            }
        }

        @Override
        public void said(Said it) {
            if (it instanceof Said.Command given && given.instruction() instanceof Instruction.Level level) {
                commanded(level.command(), bench);
            }
        }
    }

    private void commanded(LevelCommand command, Bench bench) {
        if (command.verb() == LevelCommand.Verb.CHECK) {
            CheckChore asked =
                    new CheckChore(Coded.find(CheckKind.class, command.detail()).orElseThrow());
            asked.remember(bench);
            check = Optional.of(asked);
        }
    }

    private static Optional<Part> part(String name) {
        return Arrays.stream(Part.values())
                .filter(part -> part.label().equals(name))
                .findFirst();
    }

    @Override
    public boolean step(Bench bench, SourceListener listener) {
        if (check.isPresent() && check.get().step(bench, listener)) {
            check = Optional.empty();
        }
        if (wantedHz.isPresent() && bench.nowNanos() - wantedNanos >= DIAL_NANOS) {
            bench.receiver().feed(bench.receiver().generator().withFrequency(wantedHz.getAsDouble()));
            wantedHz = OptionalDouble.empty();
        }
        if (wanted.isPresent() && bench.nowNanos() - wantedNanos >= TOOL_NANOS) {
            Part part = wanted.get();
            wanted = Optional.empty();
            bench.receiver().hand(Optional.of(part));
            turner.begin(part, bench);
        }
        return over;
    }
}

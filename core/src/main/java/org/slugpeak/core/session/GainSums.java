package org.slugpeak.core.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.Seek;

/**
 * What the adjusters of a session have gained in all, from its records. Decibels are added only along one path of the signal, at one
 * meter point, for one thing that is sought; a zero has none, so that what is left there is told as it is read. Where a plan is carried
 * out and its log does not tell the paths, nothing is added. Only adjusters that are done count. One thread at a time.
 */
public final class GainSums implements RecordSink {

    private record Key(String path, String point, Seek seek) {}

    private final Map<Key, Gains.Sum> sums = new LinkedHashMap<>();
    private final Map<String, Gains.Zero> zeros = new LinkedHashMap<>();
    private final Hearing hearing = new Hearing();
    private Optional<String> path = Optional.of("");
    private String point = "";
    private Seek seek;
    private int adjustments;

    /**
     * Nothing gained yet.
     *
     * @param seek what the session begins with
     */
    public GainSums(Seek seek) {
        this.seek = seek;
    }

    /**
     * What was gained so far.
     *
     * @return stays as it is
     */
    public Gains gains() {
        return new Gains(adjustments, List.copyOf(sums.values()), List.copyOf(zeros.values()));
    }

    @Override
    public void take(SessionRecord record) {
        record.tellFamily(hearing);
    }

    private void done(Adjuster it) {
        adjustments++;
        if (seek.signCounts()) {
            zeros.put(it.name(), new Gains.Zero(it.name(), it.after()));
        } else if (path.isPresent() && Double.isFinite(it.gainDb())) {
            Gains.Sum one = new Gains.Sum(path.get(), it.gainDb(), 1);
            sums.merge(new Key(path.get(), point, seek), one, Gains.Sum::and);
        }
    }

    /** What adds to a sum, or begins another one. */
    private final class Hearing implements FamilyListener {

        @Override
        public void work(Work it) {
            if (it instanceof Adjuster adjuster && adjuster.action() == Adjuster.Action.DONE) {
                done(adjuster);
            } else if (it instanceof Work.PlanBegun) {
                path = Optional.empty();
            } else if (it instanceof Work.PathBegun begun) {
                path = Optional.of(begun.path());
            }
        }

        @Override
        public void said(Said it) {
            if (it instanceof Said.Command given) {
                given.instruction().match(new Ordered()).run();
            }
        }
    }

    /** What is sought, and where. */
    private final class Ordered implements Instruction.Matcher<Runnable> {

        @Override
        public Runnable level(Instruction.Level it) {
            boolean moves = it.command().verb() == LevelCommand.Verb.POINT;
            return () -> point = moves ? it.command().detail() : point;
        }

        @Override
        public Runnable find(Instruction.Find it) {
            return () -> seek = it.seek();
        }

        @Override
        public Runnable takeBack(Instruction.TakeBack it) {
            return () -> {};
        }
    }
}

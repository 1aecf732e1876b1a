package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.LinkNotice;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/** The law of replay: what a recorded session is made to say again is what it said live, to the last bit. */
class ReplayTest {

    private static final int STEPS = 2_000;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void replayOfARandomSessionGivesTheSameRecords(long seed) throws Exception {
        List<SessionRecord> live = record(seed, folder.resolve("session.jsonl"));
        List<SessionRecord> again = new ArrayList<>();
        try (LogSource source = LogSource.open(folder.resolve("session.jsonl"))) {
            again.add(source.start());
            Analysis analysis = new Analysis(source.start().settings(), again::add);
            Played played = new Played(analysis);
            while (source.poll(0, played) != Progress.ENDED) {}
            assertTrue(source.ending().orElseThrow() instanceof LogEnding.Complete);
            analysis.end("done");
        }
        assertEquals(live.size(), again.size());
        for (int i = 0; i < live.size(); i++) {
            assertEquals(live.get(i), again.get(i), "record " + i);
        }
    }

    private static List<SessionRecord> record(long seed, Path file) throws Exception {
        List<SessionRecord> live = new ArrayList<>();
        SomeRecords some = new SomeRecords(seed);
        SessionStart start = some.start();
        try (SessionLog log = SessionLog.create(file, warning -> fail(warning))) {
            live.add(start);
            log.take(start);
            Analysis analysis = new Analysis(start.settings(), record -> {
                live.add(record);
                log.take(record);
            });
            new RandomBench(seed, some).run(analysis);
            analysis.end("done");
        }
        return live;
    }

    /** Plays a log to an analysis, and takes no garbled line. */
    private record Played(Analysis analysis) implements SourceListener {

        @Override
        public void reading(Reading reading) {
            analysis.reading(reading);
        }

        @Override
        public void link(long tNanos, Link.State state, String detail) {
            analysis.link(tNanos, state, detail);
        }

        @Override
        public void garbled(String where, String problem) {
            fail(where + ": " + problem);
        }

        @Override
        public void mark(String text) {
            analysis.mark(text);
        }

        @Override
        public void nextAdjuster(String name) {
            analysis.nextAdjuster(name);
        }

        @Override
        public void notice(long tNanos, LinkNotice notice, String detail) {
            analysis.interrupted(notice.code(), detail);
        }

        @Override
        public void adjusterEnded(Adjuster.Action action) {
            analysis.adjusterEnded(action);
        }
    }

    /** A hand, a meter and a cable that do everything they can, sensible or not. */
    private static final class RandomBench {

        private final SplittableRandom random;
        private final SomeRecords some;
        private final boolean awkward;
        private long tNanos;

        RandomBench(long seed, SomeRecords some) {
            this.random = new SplittableRandom(seed);
            this.some = some;
            this.awkward = seed % 2 == 0;
            this.tNanos = random.nextLong() >> 2;
        }

        void run(Analysis analysis) {
            for (int i = 0; i < STEPS; i++) {
                tNanos += random.nextInt(40_000_000);
                switch (random.nextInt(200)) {
                    case 0 -> analysis.mark(some.text());
                    case 1 -> analysis.nextAdjuster(some.text());
                    case 2 -> analysis.link(tNanos, some.oneOf(Link.State.values()), some.text());
                    case 4 ->
                        analysis.interrupted(some.oneOf(LinkNotice.values()).code(), some.text());
                    case 5 ->
                        analysis.adjusterEnded(random.nextBoolean() ? Adjuster.Action.DONE : Adjuster.Action.SKIP);
                    case 3 -> tNanos -= 1_000_000_000;
                    default -> analysis.reading(new Reading(tNanos, value(i), condition()));
                }
            }
        }

        private double value(int i) {
            if (awkward && random.nextInt(10) == 0) {
                return some.finite();
            }
            return 2 + Math.sin(i / 150.0) + 0.01 * random.nextDouble();
        }

        private Condition condition() {
            return random.nextInt(20) == 0 ? some.oneOf(Condition.values()) : Condition.OK;
        }
    }
}

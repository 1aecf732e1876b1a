package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.AnalysisListener;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
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
        Path file = folder.resolve("session.jsonl");
        List<SessionRecord> live = record(seed, file);
        List<SessionRecord> again = new ArrayList<>();
        assertTrue(replay(file, again, Garbled.REFUSED) instanceof LogEnding.Complete);
        assertEquals(live.size(), again.size());
        assertBegins(live, again);
    }

    @ParameterizedTest
    @ValueSource(longs = {9, 10})
    void replayOfATornLogGivesTheSameRecordsAsFarAsItGoes(long seed) throws Exception {
        Path file = folder.resolve("session.jsonl");
        List<SessionRecord> live = record(seed, file);
        byte[] whole = Files.readAllBytes(file);
        int firstLine = Files.readString(file).indexOf('\n') + 1;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 20; i++) {
            Path torn = folder.resolve("torn-" + i + ".jsonl");
            Files.write(torn, Arrays.copyOf(whole, firstLine + random.nextInt(whole.length - firstLine)));
            List<SessionRecord> again = new ArrayList<>();
            assertTrue(replay(torn, again, Garbled.TAKEN) instanceof LogEnding.Truncated);
            assertBegins(live, again.subList(0, again.size() - 1));
        }
    }

    private static LogEnding replay(Path file, List<SessionRecord> records, Garbled garbled) throws BadLog {
        try (LogSource source = LogSource.open(file)) {
            records.add(source.start());
            Analysis analysis = new Analysis(source.start().settings(), records::add);
            Played played = new Played(analysis, garbled);
            while (source.poll(0, played) != Progress.ENDED) {}
            analysis.end(EndReason.Known.DONE);
            return source.ending().orElseThrow();
        }
    }

    private static void assertBegins(List<SessionRecord> all, List<SessionRecord> beginning) {
        for (int i = 0; i < beginning.size(); i++) {
            assertEquals(all.get(i), beginning.get(i), "record " + i);
        }
    }

    private enum Garbled {
        TAKEN,
        REFUSED
    }

    private static List<SessionRecord> record(long seed, Path file) throws Exception {
        List<SessionRecord> live = new ArrayList<>();
        SomeRecords some = new SomeRecords(seed);
        SessionStart start = some.start();
        try (SessionLog log = SessionLog.create(file, new TestWords(), warning -> fail(warning))) {
            live.add(start);
            log.take(start);
            Analysis analysis = new Analysis(start.settings(), record -> {
                live.add(record);
                log.take(record);
            });
            new RandomBench(seed, some).run(analysis);
            analysis.end(EndReason.Known.DONE);
        }
        return live;
    }

    /** Plays a log to an analysis. */
    private static final class Played extends AnalysisListener {

        private final Garbled garbled;

        Played(Analysis analysis, Garbled garbled) {
            super(analysis);
            this.garbled = garbled;
        }

        @Override
        public void garbled(String where, String problem) {
            if (garbled == Garbled.REFUSED) {
                fail(where + ": " + problem);
            }
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
                    case 0 -> analysis.note(some.text());
                    case 6 -> analysis.command(new Instruction.Find(some.oneOf(Seek.values())));
                    case 1 -> analysis.nextAdjuster(some.text());
                    case 2 -> analysis.link(tNanos, some.oneOf(Link.State.values()), new LinkDetail.Told(some.text()));
                    case 4 -> analysis.interrupted(some.oneOf(LinkNotice.values()), new LinkDetail.Told(some.text()));
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

package org.slugpeak.cli.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.curve.CurveFile;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.run.LogOutput;
import org.slugpeak.cli.run.QuietControl;
import org.slugpeak.core.curve.CurveProgress;
import org.slugpeak.core.curve.CurveTiming;
import org.slugpeak.core.curve.ResponsePoint;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.word.Refused;

class CurveGuideTest {

    private static final long TICK_NANOS = 20_000_000;

    @TempDir
    Path folder;

    private final List<SessionRecord> records = new ArrayList<>();
    private final QuietControl control = new QuietControl();
    private final CurveProgress progress =
            new CurveProgress(List.of(454e3, 455e3, 456e3), CurveTiming.byHand(6), List.of(), false);
    private long tNanos;

    private final class Bench {

        private final CurveGuide guide;
        private final Analysis analysis;

        Bench(Optional<DialScale> marks) {
            guide = new CurveGuide(progress, true, marks);
            analysis = new Analysis(PeakSettings.defaults(), record -> {
                guide.take(record);
                guide.passedOn(record).ifPresent(records::add);
            });
            analysis.start(new SessionStart(
                    1, Instant.EPOCH, "test", Measurand.DC_VOLTS, PeakSettings.defaults(), "test", false));
            guide.begin(analysis);
        }

        void read(double seconds, double level) {
            for (long end = tNanos + (long) (seconds * 1e9); tNanos < end; tNanos += TICK_NANOS) {
                analysis.reading(Reading.of(tNanos, level));
                guide.lead(analysis, control);
            }
        }

        void point(double countedHz, double level) {
            read(0.5, level);
            guide.counted(analysis, countedHz);
            read(1.5, level);
        }
    }

    /** The marks by hand: 450 + (f - 452.6) 50 / 50.5 kHz. */
    @Test
    void eachPointIsAskedForAsTheMarkOfTheDial() throws Refused {
        DialScale scale = DialScale.through(
                List.of(
                        new KnownPoint(400e3, 397.2e3, 10),
                        new KnownPoint(450e3, 452.6e3, 10),
                        new KnownPoint(500e3, 503.1e3, 10)),
                500);
        new Bench(Optional.of(scale)).read(30, 0.5);
        List<Request.SetGenerator> asked = records.stream()
                .filter(Request.SetGenerator.class::isInstance)
                .map(Request.SetGenerator.class::cast)
                .toList();
        assertEquals(3, asked.size());
        for (Request.SetGenerator each : asked) {
            double mark = 450e3 + (each.hz() - 452.6e3) * 50 / 50.5;
            assertEquals(mark, each.mark().orElseThrow().hz(), 1e-6);
        }
    }

    @Test
    void whatTheCounterShowsIsTheFrequencyOfThePointInCurveAndLog() throws BridgeException {
        Bench bench = new Bench(Optional.empty());
        bench.point(453.2e3, 0.5);
        bench.point(454.9e3, 0.9);
        bench.guide.back(bench.analysis);
        bench.point(454.8e3, 0.8);
        bench.point(456.6e3, 0.4);
        List<ResponsePoint> points = progress.points();
        assertEquals(
                List.of(453.2e3, 454.8e3, 456.6e3),
                points.stream().map(ResponsePoint::hz).toList());
        assertTrue(records.contains(new Said.Counted(counted(), 453.2e3, 454e3, true)));
        assertEquals(points, CurveFile.read(log(), false));
    }

    private long counted() {
        return records.stream()
                .filter(Said.Counted.class::isInstance)
                .findFirst()
                .orElseThrow()
                .tNanos();
    }

    private Path log() throws BridgeException {
        Path file = folder.resolve("curve.jsonl");
        LogOutput log = LogOutput.create(file, System.err);
        records.forEach(log::take);
        log.close();
        return file;
    }

    /** A digit too many, and more than a tenth to either side. */
    @ParameterizedTest
    @ValueSource(doubles = {4532e3, 503e3, 405e3})
    void whatIsMistypedIsToldAndNotTaken(double hz) {
        Bench bench = new Bench(Optional.empty());
        bench.point(hz, 0.5);
        assertEquals(List.of(), progress.points());
        assertTrue(records.contains(new Said.Counted(counted(), hz, 454e3, false)));
        bench.read(6, 0.5);
        assertEquals(454e3, progress.points().get(0).hz());
    }
}

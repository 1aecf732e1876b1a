package org.slugpeak.core.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.receiver.Superhet;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.session.Untimed;
import org.slugpeak.core.word.Refused;

/** A set without noise that gives ten thousand times its input, and the same hum whatever is set. */
class SheetProgressTest {

    private static final double GAIN = 1e4;
    private static final double HUM_VOLTS = 0.01;
    private static final Conditions HEARD = new Conditions(Occasion.BEFORE, 0.4, 3.2, "200 pF", Double.NaN);

    private final List<SessionRecord> told = new ArrayList<>();
    private long nowNanos;

    private static Station station(Set<FigureKind> wanted) {
        Setup setup = new Setup(
                OptionalDouble.empty(),
                "400 Hz, 30 %",
                "antenna",
                "200 pF",
                OptionalDouble.empty(),
                "",
                "voice coil",
                Optional.empty(),
                HighTension.POSSIBLE);
        return new Station(1e6, Superhet.oscillatorAbove(455e3), 455e3, setup, wanted);
    }

    private SheetProgress progress(Conditions conditions, InputReach reach) {
        return new SheetProgress(List.of(station(Set.of(FigureKind.IF_REJECTION))), conditions, reach);
    }

    private void hear(SheetProgress progress) {
        for (Optional<Untimed> news = progress.nextNews(); news.isPresent(); news = progress.nextNews()) {
            told.add(news.get().at(nowNanos));
        }
    }

    private InputSetting asked() {
        return told.stream()
                .filter(Request.SetInput.class::isInstance)
                .map(it -> ((Request.SetInput) it).setting())
                .reduce((before, after) -> after)
                .orElseThrow();
    }

    private List<Figure> figures() {
        return told.stream()
                .filter(SheetWork.FigureTaken.class::isInstance)
                .map(it -> ((SheetWork.FigureTaken) it).figure())
                .toList();
    }

    private void read(SheetProgress progress, double volts, double seconds) {
        for (long endNanos = nowNanos + (long) (seconds * 1e9); nowNanos < endNanos; nowNanos += 50_000_000) {
            Reading reading = Reading.of(nowNanos, volts);
            progress.take(new ReadingTaken(reading, volts, volts, 0, 1, Trend.STEADY));
            hear(progress);
        }
    }

    private static double output(InputSetting it) {
        boolean heard = it.modulated() && Math.abs(it.frequencyHz() - it.dialHz()) < 1;
        return Math.hypot(heard ? GAIN * it.emfVolts() : 0, HUM_VOLTS);
    }

    private void go(SheetProgress progress) {
        for (int i = 0; i < 200 && !progress.isOver(); i++) {
            progress.next();
            read(progress, output(asked()), 3);
        }
    }

    @Test
    void asksForTheLeadsFirstAndThenToTuneTheSet() {
        SheetProgress progress = progress(HEARD, InputReach.BY_HAND);
        hear(progress);
        assertTrue(told.get(0) instanceof SheetWork.Begun);
        assertTrue(told.get(1) instanceof Request.SetUp);
        assertEquals(2, told.size());
        progress.next();
        hear(progress);
        assertEquals(Handwork.TUNE_SET, asked().handwork());
    }

    @Test
    void takesNothingBeforeItIsSaidToBeSet() {
        SheetProgress progress = progress(HEARD, InputReach.BY_HAND);
        hear(progress);
        progress.next();
        hear(progress);
        read(progress, 0.4, 30);
        assertFalse(told.stream().anyMatch(SheetWork.OutputTaken.class::isInstance));
        progress.next();
        read(progress, 0.4, 3);
        assertTrue(told.stream().anyMatch(SheetWork.OutputTaken.class::isInstance));
    }

    @Test
    void knowsSensitivityAndNoiseOfASetThatIsKnown() {
        SheetProgress progress = progress(HEARD, InputReach.BY_HAND);
        hear(progress);
        progress.next();
        hear(progress);
        go(progress);
        assertTrue(progress.isOver());
        double trueVolts = Math.sqrt(0.4 * 0.4 - HUM_VOLTS * HUM_VOLTS) / GAIN;
        Figure sensitivity = figures().get(0);
        assertEquals(FigureKind.SENSITIVITY, sensitivity.kind());
        assertEquals(trueVolts, sensitivity.value(), 0.002 * trueVolts);
        assertEquals(FigureKind.SIGNAL_TO_NOISE, figures().get(1).kind());
        assertEquals(32, figures().get(1).value(), 0.2);
        double tenDb = 3 * HUM_VOLTS / GAIN;
        assertEquals(tenDb, figures().get(2).value(), 0.02 * tenDb);
    }

    @Test
    void saysAtLeastWhereNothingComesThrough() {
        SheetProgress progress = progress(HEARD, InputReach.BY_HAND);
        hear(progress);
        progress.next();
        hear(progress);
        go(progress);
        Figure rejection = figures().get(3);
        assertEquals(FigureKind.IF_REJECTION, rejection.kind());
        assertEquals(Figure.Outcome.AT_LEAST, rejection.outcome());
        assertEquals(68, rejection.value(), 0.1);
    }

    @Test
    void whatIsSkippedIsNotMeasuredAndWhatHangsOnItNeither() {
        SheetProgress progress = progress(HEARD, InputReach.BY_HAND);
        hear(progress);
        progress.next();
        hear(progress);
        progress.skip();
        hear(progress);
        assertTrue(progress.isOver());
        assertEquals(
                List.of(FigureKind.SENSITIVITY, FigureKind.IF_REJECTION),
                figures().stream().map(Figure::kind).toList());
        assertTrue(figures().stream().noneMatch(Figure::hasValue));
    }

    @Test
    void atADetectorTheRestIsTakenFirstAndNoNoise() {
        Conditions detector = new Conditions(Occasion.AFTER, 1, Double.NaN, "", Double.NaN);
        SheetProgress progress = progress(detector, InputReach.BY_HAND);
        hear(progress);
        progress.next();
        hear(progress);
        assertEquals(Optional.of(CheckKind.REST), progress.takeCheck());
        assertEquals(Optional.empty(), progress.takeCheck());
        progress.take(new Request.CheckOver(nowNanos));
        hear(progress);
        go(progress);
        assertEquals(
                List.of(FigureKind.SENSITIVITY, FigureKind.IF_REJECTION),
                figures().stream().map(Figure::kind).toList());
    }

    @Test
    void aGeneratorThatObeysIsWaitedForAndGoesOnByItself() {
        SheetProgress progress = progress(HEARD, InputReach.obeying(1e-7, 0.1));
        hear(progress);
        progress.next();
        hear(progress);
        progress.next();
        read(progress, 0.2, 5);
        assertFalse(told.stream().anyMatch(SheetWork.OutputTaken.class::isInstance), "it has not said that it stands");
        for (int i = 0; i < 100 && !progress.isOver(); i++) {
            progress.take(new Request.GeneratorStands(nowNanos, asked().frequencyHz(), asked().emfVolts()));
            read(progress, output(asked()), 3);
        }
        assertTrue(progress.isOver());
        assertTrue(figures().get(0).hasValue());
    }

    @Test
    void aHandIsToldTheMarkOfItsDialAndHowWellItIsKnown() throws Refused {
        DialScale scale =
                DialScale.through(List.of(new KnownPoint(900e3, 903e3, 0), new KnownPoint(1100e3, 1103e3, 0)), 500);
        SheetProgress progress = progress(HEARD, InputReach.BY_HAND.marked(Optional.of(scale)));
        hear(progress);
        progress.next();
        hear(progress);
        Request.SetInput first = (Request.SetInput) told.get(told.size() - 1);
        assertEquals(1e6, first.setting().frequencyHz());
        assertEquals(997e3, first.mark().orElseThrow().hz(), 1e-6);
        assertEquals(500, first.mark().orElseThrow().sigmaHz(), 1e-6);
        go(progress);
        List<Request.SetInput> all = told.stream()
                .filter(Request.SetInput.class::isInstance)
                .map(Request.SetInput.class::cast)
                .toList();
        assertTrue(all.stream()
                .allMatch(it -> it.mark().isPresent() == (it.setting().frequencyHz() > 900e3)));
        assertTrue(all.stream().anyMatch(it -> it.mark().isEmpty()), "455 kHz lies outside of the dial's points");
    }

    @Test
    void aCounterIsHeldAgainstWhatAHandIsToSet() {
        SheetProgress progress = progress(HEARD, InputReach.BY_HAND);
        hear(progress);
        assertEquals(OptionalDouble.empty(), progress.wantedHz(), "leads first");
        progress.next();
        hear(progress);
        assertEquals(OptionalDouble.of(1e6), progress.wantedHz());
        while (asked().handwork() != Handwork.TUNE_GENERATOR) {
            progress.next();
            read(progress, output(asked()), 3);
        }
        assertEquals(
                OptionalDouble.empty(), progress.wantedHz(), "where the response is, there the generator is right");
    }

    /** Five percent at the strongest input, where the volume is turned down, and three times as much wherever else. */
    private List<Figure> distortions(Conditions conditions) {
        SheetProgress progress =
                new SheetProgress(List.of(station(Set.of(FigureKind.AVC))), conditions, InputReach.BY_HAND);
        hear(progress);
        for (int i = 0; i < 200 && !progress.isOver(); i++) {
            progress.next();
            progress.take(new Request.CheckOver(nowNanos));
            hear(progress);
            double distortion = asked().handwork() == Handwork.TURN_VOLUME_DOWN ? 0.05 : 0.15;
            for (int part = 0; part < 15; part++) {
                double wobble = part % 2 == 0 ? 0.002 : -0.002;
                progress.take(new Sound.Purity(nowNanos, 20, distortion + wobble, 40));
                read(progress, output(asked()), 0.2);
            }
        }
        assertTrue(progress.isOver());
        return figures().stream()
                .filter(it -> it.kind() == FigureKind.DISTORTION)
                .toList();
    }

    @Test
    void distortionIsThatOfTheReferenceOutputAtTheStrongestInput() {
        List<Figure> found = distortions(HEARD);
        assertEquals(1, found.size());
        assertEquals(0.05, found.get(0).value(), 0.0005);
        assertEquals(0.002 / Math.sqrt(10), found.get(0).sigma(), 0.0002, "of ten in two seconds");
    }

    @Test
    void whereNoToneIsHeardNothingIsSaidOfDistortion() {
        SheetProgress progress = new SheetProgress(List.of(station(Set.of(FigureKind.AVC))), HEARD, InputReach.BY_HAND);
        hear(progress);
        progress.next();
        hear(progress);
        go(progress);
        assertTrue(progress.isOver());
        assertTrue(figures().stream().noneMatch(it -> it.kind() == FigureKind.DISTORTION));
    }
}

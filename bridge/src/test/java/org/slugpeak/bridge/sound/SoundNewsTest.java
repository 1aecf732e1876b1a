package org.slugpeak.bridge.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.signal.AudioMeter;
import org.slugpeak.core.signal.AudioQuality;
import org.slugpeak.core.signal.ClippingCause;
import org.slugpeak.core.signal.MeterSettings;

/** What is said of the audio, when, and when not again. */
class SoundNewsTest {

    private static final double SILENT = Double.NaN;

    private final Told told = new Told();

    private static AudioQuality quality(double hz, double level, double sinadDb, double distortion) {
        return new AudioQuality(
                hz, level, 40, sinadDb, distortion, Double.NaN, 0, List.of(), 0, 0, false, ClippingCause.NONE);
    }

    private static AudioQuality tone(double hz) {
        return quality(hz, 0.1, 30, 0.01);
    }

    private static AudioQuality hum(int harmonic, double hiddenFs, boolean maybe) {
        return new AudioQuality(
                400, 0.1, 40, 30, 0.01, 50, 0.01, List.of(), harmonic, hiddenFs, maybe, ClippingCause.NONE);
    }

    private List<String> kinds() {
        return told.remarks.stream().map(it -> it.getClass().getSimpleName()).toList();
    }

    @Nested
    class OfTheTone {

        private final ToneNews news = new ToneNews();

        private void hear(double... hz) {
            Arrays.stream(hz).forEach(each -> news.see(tone(each), 0.05, 16, told));
        }

        @Test
        void itIsSaidWhenItComesAndWhenItHasMovedByMoreThanOnePerCent() {
            hear(400, 403.9, 396.1, 404.1, 400.1, 399.9);
            assertEquals(
                    List.of(new Sound.Tone(0, 400, 0.05, 16), new Sound.Tone(0, 404.1, 0.05, 16)),
                    told.remarks.subList(0, 2));
            assertEquals(3, told.remarks.size(), "and again when it has gone back by more than that");
        }

        @Test
        void thatThereIsNoneIsSaidOnceAndTheNextOneAgainEvenIfItIsTheSame() {
            hear(SILENT, SILENT, 400, SILENT, SILENT, 400);
            assertEquals(List.of("NoTone", "Tone", "NoTone", "Tone"), kinds());
        }
    }

    @Nested
    class OfHum {

        private final HumNews news = new HumNews();

        @Test
        void aHarmonicUnderTheToneIsSaidOnceUntilItIsAnotherOrIsGone() {
            for (int harmonic : new int[] {8, 8, 9, 0, 9}) {
                news.see(hum(harmonic, 0.01, false), told);
            }
            assertEquals(
                    List.of(8, 9, 9),
                    told.remarks.stream()
                            .map(it -> ((Sound.HumUnderTone) it).harmonic())
                            .toList());
        }

        /** Under the tone 1.005 times as much is 0.043 dB, 1.006 times 0.052. */
        @Test
        void whatChangesTheReadingByLessThanATwentiethOfADecibelIsNotSaid() {
            news.see(hum(8, 0.0005, false), told);
            assertEquals(List.of(), kinds());
            news.see(hum(8, 0.0006, false), told);
            assertEquals(List.of("HumUnderTone"), kinds());
        }

        @Test
        void aToneThatMayBeHumIsSaidEachTimeThatItComes() {
            for (boolean maybe : new boolean[] {true, true, false, true}) {
                news.see(hum(0, 0, maybe), told);
            }
            assertEquals(List.of("PerhapsHum", "PerhapsHum"), kinds());
        }
    }

    /** Whatever SINAD does, the figure that was said last is never further off than one step, and no step is said for less. */
    @Property(tries = 200)
    void sinadIsSaidWhenItIsMoreThanAStepOffWhatWasSaidLast(
            @ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = 0, max = 40) Double> sinads) {
        Told heard = new Told();
        PurityNews news = new PurityNews();
        List<Double> said = new ArrayList<>();
        for (double sinad : sinads) {
            int before = heard.remarks.size();
            news.see(quality(400, 0.1, sinad, 0.01), heard);
            boolean spoke = heard.remarks.size() > before;
            boolean far = said.isEmpty() || Math.abs(sinad - said.get(said.size() - 1)) > 1.5;
            assertEquals(far, spoke, () -> sinad + " after " + said);
            if (spoke) {
                said.add(((Sound.Purity) heard.remarks.get(before)).sinadDb());
            }
        }
        assertTrue(sinads.containsAll(said));
    }

    @Test
    void distortionIsSaidAboveTenPerCentAndNotAgainBeforeItWasBelowEight() {
        PurityNews news = new PurityNews();
        for (double distortion : new double[] {0.09, 0.11, 0.09, 0.11, 0.07, 0.09, 0.11}) {
            news.see(quality(400, 0.1, 20, distortion), told);
        }
        assertEquals(List.of("Purity", "Distorted", "Distorted"), kinds());
    }

    @Nested
    class OfTheOutput {

        /** One volt at full scale across one ohm: a level is the square root of the watts. */
        private final OutputNews news = new OutputNews(1, 1);

        private List<Double> reached(double... milliwatts) {
            for (double each : milliwatts) {
                news.see(quality(400, Math.sqrt(each / 1000), 30, 0.01), told);
            }
            return told.remarks.stream()
                    .map(it -> ((Sound.OutputReached) it).standardMilliwatts())
                    .toList();
        }

        @Test
        void eachStandardPowerIsSaidWhenItIsReached() {
            assertEquals(List.of(50.0, 500.0), reached(40, 51, 60, 499, 501, 900));
        }

        @Test
        void itIsNotSaidAgainWhileThePowerSwaysAboutIt() {
            assertEquals(List.of(50.0), reached(51, 49, 51, 38, 51));
        }

        @Test
        void itIsSaidAgainWhenAQuarterOfItWasLost() {
            assertEquals(List.of(50.0, 50.0), reached(51, 37, 51));
        }

        @Test
        void fromHalfAWattDownTheSmallerOneIsPassedInSilence() {
            assertEquals(List.of(500.0, 500.0), reached(510, 300, 510));
        }
    }

    @Test
    void whatClipsIsSaidWhenItBeginsAndWhenSomethingElseDoes() {
        ClippingNews news = new ClippingNews();
        for (ClippingCause cause : new ClippingCause[] {
            ClippingCause.INPUT, ClippingCause.INPUT, ClippingCause.SET, ClippingCause.NONE, ClippingCause.SET
        }) {
            news.see(cause, told);
        }
        assertEquals(
                List.of(ClippingCause.INPUT, ClippingCause.SET, ClippingCause.SET),
                told.remarks.stream().map(it -> ((Sound.Clips) it).cause()).toList());
    }

    @Nested
    class Looking {

        private final AudioAdvice advice = new AudioAdvice(OptionalDouble.empty(), OptionalDouble.empty(), false);

        /** A meter that has heard a square wave from one end of the scale to the other. */
        private AudioMeter overdriven() {
            AudioMeter meter = new AudioMeter(48_000, MeterSettings.defaults(), (frame, level, condition) -> {});
            double[] square = new double[24_000];
            for (int i = 0; i < square.length; i++) {
                square[i] = i / 60 % 2 == 0 ? 1 : -1;
            }
            meter.take(square, 0, square.length);
            return meter;
        }

        private void look(double seconds, Condition condition) {
            advice.see(Math.round(seconds * 1e9), overdriven(), condition, told);
        }

        @Test
        void thatSomethingBeginsToClipIsSaidAtOnce() {
            look(0, Condition.CLIPPING);
            assertEquals(List.of("Clips"), kinds());
        }

        @Test
        void anythingElseWaitsForTheFirstLookAndThenASecondBetweenTwo() {
            look(0, Condition.OK);
            look(0.39, Condition.OK);
            assertEquals(List.of(), kinds());
            look(0.4, Condition.OK);
            int first = told.remarks.size();
            assertTrue(first > 0);
        }
    }
}

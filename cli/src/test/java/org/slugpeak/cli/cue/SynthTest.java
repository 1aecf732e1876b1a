package org.slugpeak.cli.cue;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SynthTest {

    private static final double RATE = 48_000;

    /** Above every partial that is played, so that only a click is found there. */
    private static final double ABOVE_ALL_HERTZ = 10_000;

    /** Far above what the window of the measurement leaks, far below what a click leaves. */
    private static final double NO_CLICK_DB = -90;

    private final Synth synth = new Synth(RATE);

    private static Aim alone(double hertz) {
        return new Aim(hertz, Gate.OPEN, 800, Gate.SHUT);
    }

    @ParameterizedTest
    @ValueSource(doubles = {200, 440, 707, 1000, 1234.5, 2000})
    void theToneHasThePitchThatWasAimedAt(double hertz) {
        synth.aim(alone(hertz));
        assertEquals(hertz, Sound.of(synth, RATE, 2).part(0.5, 2).pitch(), hertz * 1e-4);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 4, 9, 23})
    void twoTonesBeatAtTheirDifference(double difference) {
        synth.aim(new Aim(1000 - difference, Gate.OPEN, 1000, Gate.OPEN));
        assertEquals(difference, Sound.of(synth, RATE, 4.5).part(0.5, 4.5).beatHertz(100), 0.4);
    }

    @Test
    void whereTheBeatStopsItIsNeverSilent() {
        for (int offset = 0; offset < 40; offset++) {
            Synth each = new Synth(RATE);
            each.aim(new Aim(1000 - 7, Gate.OPEN, 1000, Gate.OPEN));
            Sound.of(each, RATE, 1 + offset / 280.0);
            each.aim(new Aim(1000, Gate.OPEN, 1000, Gate.OPEN));
            assertTrue(Sound.of(each, RATE, 0.5).part(0.3, 0.5).loudest() > 0.09);
        }
    }

    @Test
    void theSameOrdersAtTheSameFramesGiveTheSameSamples() {
        assertArrayEquals(busy(3, 5).samples(), busy(3, 5).samples());
    }

    /** Everything that can be asked for, at random moments. */
    private static Sound busy(long seed, double seconds) {
        SplittableRandom random = new SplittableRandom(seed);
        Synth synth = new Synth(RATE);
        double[] all = new double[(int) (seconds * RATE)];
        for (int at = 0; at < all.length; ) {
            act(synth, random);
            float[] block = new float[Math.min(all.length - at, random.nextInt(1, 4000))];
            synth.render(block, block.length);
            for (float sample : block) {
                all[at++] = sample;
            }
        }
        return new Sound(all, RATE);
    }

    private static void act(Synth synth, SplittableRandom random) {
        List<Gate> gates = List.of(Gate.values());
        switch (random.nextInt(8)) {
            case 0 -> synth.play(any(List.of(Event.values()), random));
            case 1 -> synth.volume(random.nextDouble());
            default ->
                synth.aim(new Aim(
                        random.nextDouble(200, 2000),
                        any(gates, random),
                        random.nextDouble(700, 2000),
                        any(gates, random)));
        }
    }

    private static <T> T any(List<T> choice, SplittableRandom random) {
        return choice.get(random.nextInt(choice.size()));
    }

    @Test
    void nothingThatIsAskedForMakesAClick() {
        for (long seed = 0; seed < 5; seed++) {
            double above = busy(seed, 12).highestAboveDb(ABOVE_ALL_HERTZ);
            assertTrue(above < NO_CLICK_DB, above + " dB with seed " + seed);
        }
    }

    @Test
    void aClickWouldBeFound() {
        synth.aim(alone(1000));
        Sound sound = Sound.of(synth, RATE, 1);
        double[] cut = sound.samples().clone();
        Arrays.fill(cut, 0, 24_012, 0);
        assertTrue(new Sound(cut, RATE).highestAboveDb(ABOVE_ALL_HERTZ) > NO_CLICK_DB);
    }

    @Test
    void nothingIsEverLouderThanTheFileCanHold() {
        for (long seed = 10; seed < 14; seed++) {
            assertTrue(busy(seed, 10).loudest() < 1);
        }
    }

    @ParameterizedTest
    @EnumSource(Event.class)
    void everyEventSwellsForFiftyMilliseconds(Event event) {
        synth.aim(Aim.SILENCE);
        Sound.of(synth, RATE, 0.5);
        synth.play(event);
        Sound sound = Sound.of(synth, RATE, 3);
        double loudest = sound.part(0, 0.2).loudest();
        assertTrue(loudest > 0.05, "it is heard");
        assertTrue(sound.part(0, 0.005).loudest() < 0.03 * loudest, "5 ms");
        assertTrue(sound.part(0, 0.02).loudest() < 0.6 * loudest, "20 ms");
        assertEquals(0, sound.part(2.5, 3).loudest(), "it ends");
    }

    @Test
    void eventsDifferInRhythmOrTimbreAndNotOnlyInPitch() {
        Map<String, Event> seen = new HashMap<>();
        for (Event event : Event.values()) {
            String kind = Score.of(event).stream()
                    .map(note -> note.timbre() + " at " + note.startSeconds() + " for " + note.durationSeconds())
                    .toList()
                    .toString();
            if (event != Event.COARSE && event != Event.FINE) {
                assertEquals(null, seen.put(kind, event), event + " sounds like another");
            }
        }
    }

    @Test
    void passedFallsReturnedIsOneNoteAndHeldRises() {
        assertTrue(Score.of(Event.PASSED).get(0).hertz()
                > 1.2 * Score.of(Event.PASSED).get(1).hertz());
        assertEquals(1, Score.of(Event.RETURNED).size());
        double[] chord = Score.of(Event.HELD).stream().mapToDouble(Note::hertz).toArray();
        for (int i = 1; i < chord.length; i++) {
            assertTrue(chord[i] > chord[i - 1]);
        }
    }

    @Test
    void anEventIsHeardAboveTheTones() {
        synth.aim(new Aim(900, Gate.OPEN, 1000, Gate.OPEN));
        double before = Sound.of(synth, RATE, 1).part(0.5, 1).rms();
        synth.play(Event.RETURNED);
        Sound during = Sound.of(synth, RATE, 0.45);
        assertEquals(1760, during.part(0.08, 0.4).pitch(), 5);
        double after = Sound.of(synth, RATE, 1).part(0.5, 1).rms();
        assertEquals(before, after, before * 0.05, "and they come back");
    }

    @Test
    void chopsComeFourTimesASecondAndPingsEveryTwo() {
        synth.aim(new Aim(300, Gate.CHOPPED, 800, Gate.SHUT));
        assertEquals(4, Sound.of(synth, RATE, 4.2).part(0.2, 4.2).beatHertz(20), 0.3);
        synth.aim(new Aim(300, Gate.PINGS, 800, Gate.SHUT));
        Sound pings = Sound.of(synth, RATE, 6.1);
        for (int each = 0; each < 3; each++) {
            assertTrue(pings.part(2 * each + 0.05, 2 * each + 0.15).loudest() > 0.2);
            assertEquals(0, pings.part(2 * each + 0.3, 2 * each + 1.95).loudest());
        }
    }

    @Test
    void volumeIsAnAmplitude() {
        synth.aim(alone(1000));
        synth.volume(0.25);
        assertEquals(0.3 * 0.25, Sound.of(synth, RATE, 1).part(0.5, 1).loudest(), 1e-3);
        synth.volume(0);
        assertEquals(0, Sound.of(synth, RATE, 1).part(0.5, 1).loudest());
    }
}

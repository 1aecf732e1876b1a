package org.slugpeak.cli.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;
import static org.slugpeak.cli.display.Sessions.seconds;
import static org.slugpeak.cli.display.Sessions.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.cli.display.Sessions;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionRecord;

/** What is heard of a session, measured in the file that a person would listen to. */
class WavCueTest {

    @TempDir
    private Path folder;

    private final List<String> said = new ArrayList<>();

    private Path file() {
        return folder.resolve("cue.wav");
    }

    private WavCue open() throws IOException {
        return new WavCue(file(), CueMode.BEAT, said::add);
    }

    @Test
    void theFileIsPcmThatAnyPlayerReadsAndAsLongAsTheSession() throws Exception {
        try (WavCue cue = open()) {
            cue.take(start(Seek.PEAK));
            cue.take(reading(7.25, 0.5, 0.5, Trend.RISING));
        }
        assertEquals(7.25 + 1.5, Sound.read(file()).seconds(), 1e-3);
    }

    @Test
    void pitchAndBeatFollowTheFormula() throws Exception {
        double bestHertz = PitchScale.FIRST_BEST_HERTZ;
        double distanceDb = 0.1;
        try (WavCue cue = open()) {
            cue.take(reading(0, 1.0, 1.0, Trend.RISING));
            for (double t = 0.05; t < 4; t += 0.05) {
                cue.take(reading(t, Math.pow(10, -distanceDb / 20), 1.0, Trend.FALLING));
            }
        }
        double liveHertz = bestHertz * Math.pow(2, -distanceDb / 3);
        Sound sound = Sound.read(file()).part(0.5, 3.9);
        assertEquals(liveHertz, sound.pitch(), 0.5, "the stronger tone is the live one");
        assertEquals(bestHertz - liveHertz, sound.beatHertz(100), 0.4);
    }

    @Test
    void theBeatSlowsAndStopsAsTheReadingComesBack() throws Exception {
        double[] distancesDb = {0.12, 0.06, 0.03, 0};
        try (WavCue cue = open()) {
            cue.take(reading(0, 1.0, 1.0, Trend.RISING));
            for (int i = 0; i < distancesDb.length; i++) {
                for (double t = 0.05; t <= 3; t += 0.05) {
                    cue.take(reading(3 * i + t, Math.pow(10, -distancesDb[i] / 20), 1.0, Trend.RISING));
                }
            }
        }
        Sound sound = Sound.read(file());
        double before = Double.MAX_VALUE;
        for (int i = 0; i < 3; i++) {
            double beat = sound.part(3 * i + 0.3, 3 * i + 3).beatHertz(100);
            assertTrue(beat < before, beat + " Hz at " + distancesDb[i] + " dB");
            before = beat;
        }
        Sound still = sound.part(9.3, 12);
        double quietest = Double.MAX_VALUE;
        double loudest = 0;
        for (double t = 0; t < 2.6; t += 0.02) {
            double rms = still.part(t, t + 0.02).rms();
            quietest = Math.min(quietest, rms);
            loudest = Math.max(loudest, rms);
        }
        assertTrue(loudest / quietest < 1.05, "no beat at the best");
    }

    @Test
    void anEventIsHeardFromTheFrameOfItsRecord() throws Exception {
        try (WavCue cue = open()) {
            cue.take(start(Seek.PEAK));
            cue.take(new Returned(seconds(2), 1.0, 0));
        }
        Sound sound = Sound.read(file());
        assertEquals(0, sound.part(0, 2).loudest());
        assertTrue(sound.part(2.02, 2.1).loudest() > 0.05);
        assertEquals(1760, sound.part(2.08, 2.4).pitch(), 5);
    }

    /** Readings as a hand makes them that turns past a resonance, comes back and rests; 50 a second, 0.03 dB of noise. */
    private static List<SessionRecord> turning(long seed) {
        Sessions.Kept kept = new Sessions.Kept();
        kept.take(start(Seek.PEAK));
        Analysis analysis = new Analysis(PeakSettings.defaults(), kept);
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 50 * 16; i++) {
            double t = i / 50.0;
            double detuning = t < 6 ? -2 + t / 2 : Math.max(0, 1 - (t - 6) / 2);
            double noise = 1 + 0.0035 * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5) * 2;
            analysis.reading(Reading.of(seconds(t), noise / Math.sqrt(1 + detuning * detuning)));
        }
        return kept.records();
    }

    @Test
    void aWholeSessionIsFreeOfClicksAndSaysTheThreeVerdicts() throws Exception {
        List<SessionRecord> records = turning(4);
        try (WavCue cue = open()) {
            records.forEach(cue::take);
        }
        assertEquals(1, records.stream().filter(Passed.class::isInstance).count());
        assertTrue(records.stream().anyMatch(Returned.class::isInstance));
        assertEquals(1, records.stream().filter(Held.class::isInstance).count());
        Sound sound = Sound.read(file());
        double above = sound.highestAboveDb(10_000);
        assertTrue(above < -60, above + " dB above all partials");
        assertTrue(sound.loudest() < 1 && sound.loudest() > 0.1);
        assertEquals(List.of(), said);
    }

    @Test
    void theSameSessionGivesTheSameFile() throws Exception {
        for (String name : List.of("one.wav", "two.wav")) {
            try (WavCue cue = new WavCue(folder.resolve(name), CueMode.BEAT, said::add)) {
                turning(7).forEach(cue::take);
            }
        }
        assertEquals(-1, Files.mismatch(folder.resolve("one.wav"), folder.resolve("two.wav")));
    }

    @Test
    void aLongPauseIsCutShort() throws Exception {
        try (WavCue cue = open()) {
            cue.take(reading(0, 1.0, 1.0, Trend.RISING));
            cue.take(reading(1e6, 1.0, 1.0, Trend.RISING));
        }
        assertEquals(10 + 1.5, Sound.read(file()).seconds(), 0.01);
    }

    @Test
    void theFileCanBeHeardEvenIfTheProgramIsKilled() throws Exception {
        WavCue killed = open();
        killed.take(reading(0, 1.0, 1.0, Trend.RISING));
        killed.take(reading(5, 1.0, 1.0, Trend.RISING));
        assertTrue(Sound.read(file()).seconds() >= 4);
        killed.close();
    }

    @Test
    void fromReadingToPitchTheSoundItselfTakesLessThanThirtyMilliseconds() throws Exception {
        try (WavCue cue = open()) {
            cue.take(reading(0, 1.0, 1.0, Trend.RISING));
            cue.take(reading(1.0, 0.5, 1.0, Trend.FALLING));
            cue.take(reading(2.0, 0.5, 1.0, Trend.FALLING));
        }
        double goal = PitchScale.hertz(PitchScale.FIRST_BEST_HERTZ, 20 * Math.log10(2));
        double half = Math.sqrt(PitchScale.FIRST_BEST_HERTZ * goal);
        Sound after = Sound.read(file());
        double atSeconds = 1.0;
        while (zeroCrossingPitch(after, atSeconds) > half) {
            atSeconds += 0.001;
        }
        assertTrue(atSeconds - 1.0 < 0.030, (atSeconds - 1.0) + " s until half of the step is heard");
    }

    /** Pitch in a stretch of 10 ms by its zero crossings; the steady tone is weaker and does not add any. */
    private static double zeroCrossingPitch(Sound sound, double fromSeconds) {
        double[] samples = sound.part(fromSeconds, fromSeconds + 0.01).samples();
        int crossings = 0;
        for (int i = 1; i < samples.length; i++) {
            crossings += samples[i - 1] < 0 != samples[i] < 0 ? 1 : 0;
        }
        return crossings / 2.0 / 0.01;
    }
}

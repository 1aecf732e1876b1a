package org.slugpeak.cli.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;
import static org.slugpeak.cli.display.Sessions.seconds;
import static org.slugpeak.cli.display.Sessions.start;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.display.Sessions;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Passed;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;

@Timeout(60)
class SpeakerCueTest {

    private final LinkedBlockingQueue<String> said = new LinkedBlockingQueue<>();
    private final Semaphore bells = new Semaphore(0);

    /** A speaker that plays into memory as fast as it is written to, until it is taken away. */
    private static final class MemorySpeaker implements Speaker {

        private final Queue<Float> heard = new ConcurrentLinkedQueue<>();
        private final CountDownLatch closed = new CountDownLatch(1);
        private volatile boolean gone;

        @Override
        public int framesPerSecond() {
            return 48_000;
        }

        @Override
        public int blockFrames() {
            return 240;
        }

        @Override
        public boolean write(float[] samples, int count) {
            if (heard.size() < 480_000) {
                for (int i = 0; i < count; i++) {
                    heard.add(samples[i]);
                }
            }
            return !gone;
        }

        @Override
        public void close() {
            closed.countDown();
        }

        boolean hasPlayedSomething() {
            return heard.stream().anyMatch(sample -> Math.abs(sample) > 0.05);
        }
    }

    private SpeakerCue cue(Speaker.Opener opener) {
        SpeakerCue cue = new SpeakerCue(
                CueMode.BEAT, opener, bells::release, said::add, "no speaker", Duration.ofMillis(5), Ticker.system());
        cue.volume(1);
        return cue;
    }

    private String nextWords() throws InterruptedException {
        String words = said.poll(30, TimeUnit.SECONDS);
        return words == null ? "" : words;
    }

    private static void until(BooleanSupplier condition) {
        while (!condition.getAsBoolean()) {
            Thread.onSpinWait();
        }
    }

    @Test
    void whatIsReadIsHeard() {
        MemorySpeaker speaker = new MemorySpeaker();
        SpeakerCue cue = cue(() -> Optional.of(speaker));
        cue.take(reading(0, 1.0, 1.0, Trend.RISING));
        until(speaker::hasPlayedSomething);
        cue.close();
        assertEquals(0, speaker.closed.getCount());
    }

    @Test
    void withoutASpeakerOneLineIsSaidAndTheBellRingsForEvents() throws Exception {
        SpeakerCue cue = cue(Optional::empty);
        assertEquals("no speaker", nextWords());
        cue.take(reading(0, 1.0, 1.0, Trend.RISING));
        cue.take(new Passed(seconds(1), 1.0, seconds(0.9), 0.2));
        assertTrue(bells.tryAcquire(30, TimeUnit.SECONDS));
        cue.close();
        assertEquals(0, bells.availablePermits(), "one bell, and none for a plain reading");
        assertTrue(said.isEmpty(), "one line");
    }

    @Test
    void aSpeakerThatIsTakenAwayIsSaidOnceAndUsedAgainWhenItIsBack() throws Exception {
        MemorySpeaker first = new MemorySpeaker();
        MemorySpeaker second = new MemorySpeaker();
        Queue<Optional<Speaker>> plugged =
                new ArrayDeque<>(List.of(Optional.of(first), Optional.empty(), Optional.empty(), Optional.of(second)));
        SpeakerCue cue = cue(() -> Optional.ofNullable(plugged.poll()).flatMap(each -> each));
        cue.take(reading(0, 1.0, 1.0, Trend.RISING));
        until(first::hasPlayedSomething);
        first.gone = true;
        assertTrue(nextWords().contains("has gone"));
        assertEquals("sound is back", nextWords());
        until(second::hasPlayedSomething);
        cue.close();
        assertTrue(said.isEmpty());
    }

    @Test
    void aDeviceThatHoldsAWriteForEverDoesNotHoldTheProgram() throws Exception {
        CountDownLatch held = new CountDownLatch(1);
        CountDownLatch letGo = new CountDownLatch(1);
        Speaker stuck = new Speaker() {
            @Override
            public int framesPerSecond() {
                return 48_000;
            }

            @Override
            public int blockFrames() {
                return 240;
            }

            @Override
            public boolean write(float[] samples, int count) {
                held.countDown();
                try {
                    letGo.await();
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                return false;
            }

            @Override
            public void close() {
                letGo.countDown();
            }
        };
        SpeakerCue cue = cue(() -> Optional.of(stuck));
        held.await();
        cue.close();
        assertEquals(0, letGo.getCount());
    }

    @Command
    private static final class AnyCommand {
        @Mixin
        private CueOptions cue = new CueOptions();
    }

    private static CueOptions options(String... arguments) {
        return CommandLine.populateCommand(new AnyCommand(), arguments).cue;
    }

    @Test
    void aRemoteSessionRingsTheBellInstead() throws Exception {
        Map<String, String> environment = Map.of("SSH_CONNECTION", "192.0.2.1 50000 192.0.2.2 22");
        try (Cue cue = options().open(true, said::add, bells::release, environment)) {
            assertTrue(nextWords().contains("remote session"));
            cue.take(new Passed(seconds(1), 1.0, seconds(0.9), 0.2));
            assertTrue(bells.tryAcquire(30, TimeUnit.SECONDS));
            assertEquals("bell", cue.status());
        }
    }

    @Test
    void offMeansOff() throws Exception {
        try (Cue cue = options("--cue", "off").open(true, said::add, bells::release, Map.of())) {
            cue.take(new Passed(seconds(1), 1.0, seconds(0.9), 0.2));
            assertEquals("", cue.status());
        }
        assertTrue(said.isEmpty());
        assertEquals(0, bells.availablePermits());
    }

    private Cue audible(String device) {
        SpeakerCue speaker = cue(() -> Optional.of(new MemorySpeaker()));
        return new Cue(CueMode.BEAT, 6, device, Optional.of(speaker), Optional.empty(), said::add);
    }

    @Test
    void aCueOnTheCardThatMeasuresIsWarnedOf() throws Exception {
        try (Cue cue = audible("")) {
            cue.take(start(Seek.PEAK, "sound:USB codec"));
            assertTrue(nextWords().contains("headphones"));
        }
        try (Cue cue = audible("usb")) {
            cue.take(start(Seek.PEAK, "sound:USB codec"));
            assertTrue(nextWords().contains("leak"));
        }
    }

    @Test
    void aCueOnAnotherCardOrForAnotherMeterIsNot() {
        try (Cue cue = audible("HDMI")) {
            cue.take(start(Seek.PEAK, "sound:USB codec"));
        }
        try (Cue cue = audible("")) {
            cue.take(start(Seek.PEAK, "/dev/ttyUSB0"));
        }
        assertTrue(said.isEmpty());
    }

    @Test
    void volumeGoesInStepsOfThreeDecibelsAndCanBeTurnedOff() {
        assertEquals(0, Cue.amplitude(0));
        assertEquals(1, Cue.amplitude(10), 1e-12);
        assertEquals(3, 20 * Math.log10(Cue.amplitude(7) / Cue.amplitude(6)), 1e-9);
        try (Cue cue = audible("")) {
            until(() -> cue.status().equals("sound beat 6"));
            cue.louder();
            assertEquals("sound beat 7", cue.status());
            cue.toggle();
            assertEquals("sound off", cue.status());
            cue.toggle();
            cue.softer();
            assertEquals("sound beat 6", cue.status());
        }
    }

    @Test
    void aFileThatCannotBeWrittenIsRefusedWithWhatToDo(@TempDir Path folder) {
        String path = folder.resolve("missing").resolve("cue.wav").toString();
        BadConfiguration refused = assertThrows(
                BadConfiguration.class,
                () -> options("--cue-wav", path).open(true, said::add, bells::release, Map.of()));
        assertTrue(refused.getMessage().contains(path));
    }

    @Test
    void nonsenseIsRefusedByName() {
        assertTrue(assertThrows(ParameterException.class, () -> options("--cue", "loud"))
                .getMessage()
                .contains("none of beat, pitch, off"));
        assertTrue(assertThrows(ParameterException.class, () -> options("--volume", "11"))
                .getMessage()
                .contains("from 0 to 10"));
    }

    @Test
    void replayedSessionsGoIntoTheFileOnly(@TempDir Path folder) throws Exception {
        String path = folder.resolve("cue.wav").toString();
        try (Cue cue = options("--cue-wav", path).open(false, said::add, bells::release, Map.of())) {
            cue.take(Sessions.start(Seek.PEAK));
            cue.take(reading(1, 1.0, 1.0, Trend.RISING));
            assertEquals("", cue.status());
        }
        assertEquals(2.5, Sound.read(Path.of(path)).seconds(), 0.01);
    }
}

package org.slugpeak.cli.cue;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.words.CuePhrase;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * Plays the cues through a speaker as the records come. Records cost the thread that brings them next to nothing; a thread of
 * its own opens the speaker, writes to it without pause, and where there is none or it is taken away rings the terminal's
 * bell for events until it comes back.
 */
final class SpeakerCue implements RecordSink, AutoCloseable {

    private static final Duration CLOSING = Duration.ofMillis(1800);
    private static final double FADE_SECONDS = 0.1;
    private static final double LAST_EVENT_SECONDS = 1.2;

    private final Speaker.Opener opener;
    private final Runnable bell;
    private final Consumer<String> say;
    private final String withoutSpeaker;
    private final Duration retry;
    private final Ticker ticker;
    private final Conductor conductor;
    private final LinkedBlockingQueue<Order> orders = new LinkedBlockingQueue<>();
    private final Thread player;

    private volatile boolean closed;
    private volatile double volume;
    private volatile boolean giving;
    private volatile Optional<Speaker> open = Optional.empty();

    private Aim lastAim = Aim.SILENCE;

    /** What the conductor wants done, on its way to the thread that plays. */
    private sealed interface Order permits NewAim, NewEvent {}

    private record NewAim(Aim aim) implements Order {}

    private record NewEvent(Event event) implements Order {}

    /**
     * Starts to play.
     *
     * @param mode what is heard
     * @param opener finds the speaker; called in the player's own thread
     * @param bell rings where there is no speaker
     * @param say tells the user, in one line
     * @param withoutSpeaker what to tell where there is no speaker
     * @param retry between two attempts to find a speaker
     * @param ticker counts that time
     */
    SpeakerCue(
            CueMode mode,
            Speaker.Opener opener,
            Runnable bell,
            Consumer<String> say,
            String withoutSpeaker,
            Duration retry,
            Ticker ticker) {
        this.opener = opener;
        this.bell = bell;
        this.say = say;
        this.withoutSpeaker = withoutSpeaker;
        this.retry = retry;
        this.ticker = ticker;
        conductor = new Conductor(mode, new Orders());
        player = new Thread(this::run, "cue");
        player.setDaemon(true);
        player.start();
    }

    @Override
    public void take(SessionRecord record) {
        conductor.take(record);
    }

    boolean isAudible() {
        return open.isPresent();
    }

    void volume(double newVolume) {
        volume = newVolume;
    }

    /** Is silent while somebody else is heard. */
    void giveWay(boolean now) {
        giving = now;
    }

    private void run() {
        boolean told = false;
        try {
            while (!closed) {
                Optional<Speaker> speaker = opener.open();
                if (speaker.isPresent()) {
                    if (told) {
                        say.accept(CuePhrase.BACK.of());
                    }
                    play(speaker.get());
                    told = !closed;
                    tellLoss();
                } else if (!told) {
                    told = true;
                    say.accept(withoutSpeaker);
                }
                ringBells();
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    private void tellLoss() {
        if (!closed) {
            say.accept(CuePhrase.GONE.of());
        }
    }

    private void play(Speaker speaker) {
        open = Optional.of(speaker);
        Synth synth = new Synth(speaker.framesPerSecond());
        synth.aim(lastAim);
        float[] block = new float[speaker.blockFrames()];
        boolean alive = true;
        while (alive && !closed) {
            synth.volume(giving ? 0 : volume);
            for (Order order = orders.poll(); order != null; order = orders.poll()) {
                obey(order, synth);
            }
            synth.render(block, block.length);
            alive = speaker.write(block, block.length);
        }
        if (alive) {
            finish(synth, speaker, block);
        }
        open = Optional.empty();
        speaker.close();
    }

    /** Lets the last event sound to its end and the voices fade, and pushes both through the device with silence. */
    private static void finish(Synth synth, Speaker speaker, float[] block) {
        synth.aim(Aim.SILENCE);
        long silence = synth.frames() + Math.round(FADE_SECONDS * speaker.framesPerSecond());
        long latest = synth.frames() + Math.round(LAST_EVENT_SECONDS * speaker.framesPerSecond());
        boolean alive = true;
        while (alive && synth.frames() < latest && (synth.isPlaying() || synth.frames() < silence)) {
            synth.render(block, block.length);
            alive = speaker.write(block, block.length);
        }
    }

    private void obey(Order order, Synth synth) {
        if (order instanceof NewAim newAim) {
            lastAim = newAim.aim();
            synth.aim(lastAim);
        } else if (order instanceof NewEvent newEvent) {
            synth.play(newEvent.event());
        }
    }

    private void ringBells() throws InterruptedException {
        long untilNanos = ticker.nowNanos() + retry.toNanos();
        for (long left = retry.toNanos(); left > 0 && !closed; left = untilNanos - ticker.nowNanos()) {
            Order order = orders.poll(left, TimeUnit.NANOSECONDS);
            if (order instanceof NewAim newAim) {
                lastAim = newAim.aim();
            } else if (order instanceof NewEvent newEvent && newEvent.event().ringsBell() && volume > 0) {
                bell.run();
            }
        }
    }

    /** Falls silent and lets the speaker go. Safe to call twice. */
    @Override
    public void close() {
        closed = true;
        orders.add(new NewAim(Aim.SILENCE));
        try {
            player.join(CLOSING.toMillis());
            if (player.isAlive()) {
                // A starved device can hold a write for ever; closing it from here lets go.
                open.ifPresent(Speaker::close);
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    private final class Orders implements CueTarget {

        @Override
        public void aim(Aim aim) {
            orders.add(new NewAim(aim));
        }

        @Override
        public void play(Event event) {
            orders.add(new NewEvent(event));
        }

        @Override
        public void say(String words) {
            say.accept(words);
        }
    }
}

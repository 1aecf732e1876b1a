package org.slugpeak.cli.cue;

import java.util.Optional;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/** What would be heard of a session now, for a device elsewhere that makes the sound itself. One thread at a time. */
public final class Overheard implements RecordSink {

    private final Conductor conductor = new Conductor(CueMode.BEAT, new Kept());
    private Aim aim = Aim.SILENCE;
    private Optional<Event> event = Optional.empty();
    private long number;

    /** Silence. */
    public Overheard() {}

    /**
     * What is to be heard from one moment on. Immutable; any thread may use it.
     *
     * @param number of events so far
     * @param event the last of them, by its name in {@link ScoreSheet}; empty before the first
     * @param liveHertz pitch of the reading
     * @param liveGate how it is let through, by its name in {@link ScoreSheet}
     * @param referenceHertz pitch of what it is compared with
     * @param referenceGate how that is let through
     */
    public record Tone(
            long number, String event, double liveHertz, String liveGate, double referenceHertz, String referenceGate) {

        private static Tone of(long number, Optional<Event> event, Aim aim) {
            return new Tone(
                    number,
                    event.map(Event::name).orElse(""),
                    aim.liveHertz(),
                    aim.live().name(),
                    aim.referenceHertz(),
                    aim.reference().name());
        }
    }

    @Override
    public void take(SessionRecord record) {
        conductor.take(record);
    }

    /**
     * As it is now.
     *
     * @return after the last record
     */
    public Tone tone() {
        return Tone.of(number, event, aim);
    }

    /** Words are told by whoever shows the session. */
    private final class Kept implements CueTarget {

        @Override
        public void aim(Aim newAim) {
            aim = newAim;
        }

        @Override
        public void play(Event played) {
            event = Optional.of(played);
            number++;
        }

        @Override
        public void say(String words) {}
    }
}

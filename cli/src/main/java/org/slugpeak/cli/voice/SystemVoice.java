package org.slugpeak.cli.voice;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.slugpeak.cli.words.VoicePhrase;
import org.slugpeak.core.session.RecordSink;

/** The voice of the system, where it has one that works; else silence. Any thread may use it, but records come in one. */
public final class SystemVoice {

    private final Optional<Mouth> mouth;

    private SystemVoice(Optional<Mouth> mouth) {
        this.mouth = mouth;
    }

    /** A voice that says nothing, because nobody asked it to. */
    public static SystemVoice silent() {
        return new SystemVoice(Optional.empty());
    }

    /**
     * Looks for a voice.
     *
     * @param tell is told, in one line and once, where there is none
     * @return to be finished by the caller
     */
    public static SystemVoice open(Consumer<String> tell) {
        return open(System.getProperty("os.name", ""), System.getenv(), tell);
    }

    static SystemVoice open(String system, Map<String, String> environment, Consumer<String> tell) {
        List<VoiceProgram> programs = VoiceProgram.found(system, environment);
        if (programs.isEmpty()) {
            tell.accept(VoicePhrase.NO_VOICE.of());
            return silent();
        }
        return new SystemVoice(Optional.of(new Mouth(programs, Utterance.Patience.usual(), tell)));
    }

    /**
     * Says something that is no part of a session; a sentence that is being said is dropped for it.
     *
     * @param sentence as it is written
     */
    public void say(String sentence) {
        mouth.ifPresent(it -> it.sentence(Pronunciation.of(sentence)));
    }

    /**
     * Speaks of a session.
     *
     * @param withTone whether the reading is heard as a tone, too, which is not talked over
     * @param withKeys whether somebody has to say when leads are where they belong: the key for it is told
     * @param whileSpeaking is told when something is being spoken, and when no longer
     * @return takes every record, in one thread
     */
    public RecordSink ofSession(boolean withTone, boolean withKeys, Consumer<Boolean> whileSpeaking) {
        if (mouth.isEmpty()) {
            return record -> {};
        }
        mouth.get().onSpeaking(whileSpeaking);
        return new Talker(mouth.get(), withTone, withKeys);
    }

    /** Waits until the last sentence has been spoken. */
    public void finish() {
        mouth.ifPresent(Mouth::finish);
    }
}

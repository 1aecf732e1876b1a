package org.slugpeak.cli.cue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.quantity.EnumWord;
import org.slugpeak.cli.words.CuePhrase;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options of every command that can be heard, to be mixed in. One thread at a time. */
public final class CueOptions {

    private static final Duration RETRY = Duration.ofSeconds(5);

    @Option(names = "--cue", paramLabel = "beat|pitch|off", converter = ModeConverter.class)
    private Optional<CueMode> mode = Optional.empty();

    @Option(names = "--volume", paramLabel = "0..10", converter = VolumeConverter.class)
    private int volume = 6;

    @Option(names = "--cue-device", paramLabel = "NAME")
    private Optional<String> device = Optional.empty();

    @Option(names = "--cue-wav", paramLabel = "FILE")
    private Optional<Path> wav = Optional.empty();

    /** What the command line says nothing about stays as usual. */
    public CueOptions() {}

    /**
     * Whether the user wants to hear anything.
     *
     * @return false for {@code --cue off}
     */
    public boolean isHeard() {
        return chosen() != CueMode.OFF;
    }

    /**
     * Whether the user said what is to be heard.
     *
     * @return true where {@code --cue} was given
     */
    public boolean isAsked() {
        return mode.isPresent();
    }

    private CueMode chosen() {
        return mode.orElse(CueMode.BEAT);
    }

    /**
     * Opens what was asked for. Sound devices are looked for in another thread, so this takes no time.
     *
     * @param audible false where records come faster than they happened, so that only a file makes sense
     * @param say tells the user something in one line; called from several threads
     * @param bell rings the terminal's bell
     * @return to be closed by the caller
     * @throws BadConfiguration if the file cannot be written
     */
    public Cue open(boolean audible, Consumer<String> say, Runnable bell) throws BadConfiguration {
        return open(audible, say, bell, System.getenv());
    }

    Cue open(boolean audible, Consumer<String> say, Runnable bell, Map<String, String> environment)
            throws BadConfiguration {
        Optional<WavCue> file = wav.isPresent() ? Optional.of(openWav(wav.get(), say)) : Optional.empty();
        boolean heard = audible && isHeard();
        Optional<SpeakerCue> speaker = heard ? Optional.of(speaker(say, bell, environment)) : Optional.empty();
        return new Cue(chosen(), volume, device.orElse(""), speaker, file, say);
    }

    private WavCue openWav(Path path, Consumer<String> say) throws BadConfiguration {
        try {
            return new WavCue(path, isHeard() ? chosen() : CueMode.BEAT, say);
        } catch (FileAlreadyExistsException taken) {
            throw new BadConfiguration(path + " is there already and is not touched: choose another name", taken);
        } catch (IOException refused) {
            throw new BadConfiguration(
                    "cannot write " + path + ": name a file in a folder that you may write to", refused);
        }
    }

    private SpeakerCue speaker(Consumer<String> say, Runnable bell, Map<String, String> environment) {
        boolean remote = device.isEmpty()
                && !environment.getOrDefault("SSH_CONNECTION", "").isEmpty();
        String name = device.orElse("");
        Speaker.Opener opener = remote ? Optional::empty : () -> LineSpeaker.open(name);
        return new SpeakerCue(chosen(), opener, bell, say, withoutSpeaker(remote, name), RETRY, Ticker.system());
    }

    private static String withoutSpeaker(boolean remote, String name) {
        if (remote) {
            return CuePhrase.REMOTE.of();
        }
        return name.isEmpty() ? CuePhrase.NO_OUTPUT.of() : CuePhrase.NO_SUCH_OUTPUT.of(name);
    }

    static final class ModeConverter implements ITypeConverter<CueMode> {
        @Override
        public CueMode convert(String value) {
            return EnumWord.of(CueMode.class, value, "beat, pitch, off");
        }
    }

    static final class VolumeConverter implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String value) {
            if (value.matches("\\d{1,2}") && Integer.parseInt(value) <= Cue.LOUDEST) {
                return Integer.valueOf(value);
            }
            throw new TypeConversionException("'" + value + "' is no whole number from 0 to " + Cue.LOUDEST);
        }
    }
}

package org.slugpeak.cli.option;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import org.slugpeak.bridge.sound.Channel;
import org.slugpeak.bridge.sound.SoundOptions;
import org.slugpeak.core.signal.LevelKind;
import org.slugpeak.core.signal.MeterSettings;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** How audio is measured. */
public final class AudioOptions {

    @Option(
            names = "--mode",
            paramLabel = "tone|rms|band",
            converter = KindConverter.class,
            description = "Audio: tone, the modulation tone alone (usual); rms, everything; band, 300 to "
                    + "1100 Hz without hum.")
    private LevelKind kind = LevelKind.TONE;

    @Option(
            names = "--channel",
            paramLabel = "left|right|mix",
            converter = ChannelConverter.class,
            description = "Audio: the channel. Usual: left.")
    private Channel channel = Channel.LEFT;

    @Option(
            names = "--interval",
            paramLabel = "MS",
            description = "Audio: milliseconds from reading to reading, 1 to 1000. Usual: 20.")
    private int intervalMillis = 20;

    @Option(
            names = "--response",
            paramLabel = "MS",
            description = "Audio: milliseconds after which nothing of an earlier level is left, 40 to "
                    + "1000. Usual: 100; longer is calmer.")
    private int responseMillis = 100;

    @Option(
            names = "--ohms",
            paramLabel = "OHMS",
            description = "Audio: impedance of the voice coil, so that the output power is told in milliwatts.")
    private Optional<Double> ohms = Optional.empty();

    /** What was said. */
    SoundOptions options() {
        SoundOptions options = SoundOptions.defaults().withMeter(meter()).withChannel(channel);
        if (ohms.isEmpty()) {
            return options;
        }
        try {
            return options.withOhms(ohms.get());
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException("--ohms takes a number above 0, not " + ohms.get());
        }
    }

    private MeterSettings meter() {
        try {
            return new MeterSettings(kind, Duration.ofMillis(responseMillis), Duration.ofMillis(intervalMillis));
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(String.valueOf(e.getMessage()));
        }
    }

    /** Reads the word after {@code --mode}. */
    static final class KindConverter implements ITypeConverter<LevelKind> {
        @Override
        public LevelKind convert(String word) {
            return AudioOptions.convert(LevelKind.class, word, "tone, rms, band");
        }
    }

    /** Reads the word after {@code --channel}. */
    static final class ChannelConverter implements ITypeConverter<Channel> {
        @Override
        public Channel convert(String word) {
            return AudioOptions.convert(Channel.class, word, "left, right, mix");
        }
    }

    private static <E extends Enum<E>> E convert(Class<E> type, String word, String known) {
        try {
            return Enum.valueOf(type, word.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException("'" + word + "' is none of " + known);
        }
    }
}

package org.slugpeak.cli.option;

import java.time.Duration;
import java.util.Optional;
import org.slugpeak.bridge.sound.Channel;
import org.slugpeak.bridge.sound.SoundOptions;
import org.slugpeak.cli.quantity.EnumWord;
import org.slugpeak.core.signal.LevelKind;
import org.slugpeak.core.signal.MeterSettings;
import org.slugpeak.core.word.Refused;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** How audio is measured. */
public final class AudioOptions {

    @Option(names = "--mode", paramLabel = "tone|rms|band", converter = KindConverter.class)
    private Optional<LevelKind> kind = Optional.empty();

    private LevelKind usualKind = LevelKind.TONE;
    private boolean everyPurity;

    @Option(names = "--channel", paramLabel = "left|right|mix", converter = ChannelConverter.class)
    private Channel channel = Channel.LEFT;

    @Option(names = "--interval", paramLabel = "MS")
    private int intervalMillis = 20;

    @Option(names = "--response", paramLabel = "MS")
    private int responseMillis = 100;

    @Option(names = "--ohms", paramLabel = "OHMS")
    private Optional<Double> ohms = Optional.empty();

    /** Noise, hum and distortion count: everything is heard. */
    void hearEverything() {
        if (kind.filter(it -> it != LevelKind.RMS).isPresent()) {
            throw new TypeConversionException(
                    "noise and hum are part of the figures: leave --mode out, or give --mode rms");
        }
        usualKind = LevelKind.RMS;
        everyPurity = true;
    }

    /** What was said. */
    SoundOptions options() {
        SoundOptions heard = SoundOptions.defaults().withMeter(meter()).withChannel(channel);
        SoundOptions options = everyPurity ? heard.withEveryPurity() : heard;
        if (ohms.isEmpty()) {
            return options;
        }
        if (!(ohms.get() > 0 && ohms.get() < Double.POSITIVE_INFINITY)) {
            throw new TypeConversionException("--ohms takes a number above 0, not " + ohms.get());
        }
        return options.withOhms(ohms.get());
    }

    private MeterSettings meter() {
        try {
            return MeterSettings.of(
                    kind.orElse(usualKind), Duration.ofMillis(responseMillis), Duration.ofMillis(intervalMillis));
        } catch (Refused e) {
            throw new TypeConversionException(e.reason());
        }
    }

    /** Reads the word after {@code --mode}. */
    static final class KindConverter implements ITypeConverter<LevelKind> {
        @Override
        public LevelKind convert(String word) {
            return EnumWord.of(LevelKind.class, word, "tone, rms, band");
        }
    }

    /** Reads the word after {@code --channel}. */
    static final class ChannelConverter implements ITypeConverter<Channel> {
        @Override
        public Channel convert(String word) {
            return EnumWord.of(Channel.class, word, "left, right, mix");
        }
    }
}

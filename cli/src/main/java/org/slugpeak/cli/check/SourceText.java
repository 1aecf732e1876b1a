package org.slugpeak.cli.check;

import java.math.BigDecimal;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.cli.words.SourcePhrase;

/** Says what answers at the other end of a source. */
public final class SourceText implements SourceDescription.Matcher<String> {

    @Override
    public String instrument(SourceDescription.Instrument it) {
        return it.name();
    }

    @Override
    public String text(SourceDescription.Text it) {
        String file = it.file().orElseGet(SourcePhrase.STANDARD_INPUT::of);
        String column = it.column().isEmpty() ? file : SourcePhrase.COLUMN.of(file, it.column());
        String unit = it.unit().isEmpty() ? SourcePhrase.RATIOS.of() : it.unit();
        return it.fromDecibels() ? SourcePhrase.FROM_DECIBELS.of(column, unit) : column;
    }

    @Override
    public String audio(SourceDescription.Audio it) {
        String what = it.fileSeconds().isPresent()
                ? SourcePhrase.FILE.of(it.name(), format(it), it.fileSeconds().getAsDouble())
                : SourcePhrase.INPUT.of(it.name(), format(it));
        return it.voltsPerFullScale().isPresent()
                ? SourcePhrase.CALIBRATED.of(what, it.voltsPerFullScale().getAsDouble())
                : SourcePhrase.NOT_CALIBRATED.of(what);
    }

    private static String format(SourceDescription.Audio it) {
        String samples = (it.floating() ? SourcePhrase.FLOATING : SourcePhrase.BITS).of(it.bits());
        String channels = it.channels() == 1 ? SourcePhrase.MONO.of() : SourcePhrase.CHANNELS.of(it.channels());
        String kilohertz =
                BigDecimal.valueOf(it.rateHz(), 3).stripTrailingZeros().toPlainString();
        return SourcePhrase.FORMAT.of(kilohertz, samples, channels);
    }

    @Override
    public String log(SourceDescription.Log it) {
        return SourcePhrase.RECORDED.of(it.file(), it.startedAt(), it.source());
    }

    @Override
    public String simulation(SourceDescription.Simulation it) {
        return (it.madeUp() ? SourcePhrase.MADE_UP : SourcePhrase.SIMULATED).of(it.set(), meter(it.meter()));
    }

    private static String meter(SourceDescription.MeterKind kind) {
        return switch (kind) {
            case MULTIMETER -> SourcePhrase.MULTIMETER.of();
            case CONVERTER -> SourcePhrase.CONVERTER.of();
            case LOADING_CONVERTER -> SourcePhrase.LOADING_CONVERTER.of();
            case SOUND_CARD -> SourcePhrase.SOUND_CARD.of();
        };
    }
}

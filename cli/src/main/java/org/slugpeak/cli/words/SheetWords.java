package org.slugpeak.cli.words;

import java.util.Locale;
import java.util.Optional;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.Limit;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.receiver.OutputPower;
import org.slugpeak.core.scale.ScaleEstimate;

/** A receiver's sheet in words. All methods are pure. */
public final class SheetWords {

    private static final double MILLI = 1e-3;

    private SheetWords() {}

    static String setting(InputSetting it, Optional<ScaleEstimate> mark) {
        String frequency = Frequencies.plain(it.frequencyHz());
        String generator = SheetPhrase.INPUT.of(
                mark.map(at -> SheetPhrase.AT_MARK.of(frequency, PlanWords.mark(at)))
                        .orElse(frequency),
                level(it.emfVolts()),
                (it.modulated() ? SheetPhrase.MODULATED : SheetPhrase.CARRIER).of());
        return switch (it.handwork()) {
            case NONE -> generator;
            case TUNE_SET -> SheetPhrase.TUNE_SET.of(generator, Frequencies.plain(it.dialHz()));
            case TUNE_GENERATOR -> SheetPhrase.TUNE_GENERATOR.of(generator);
            case TURN_VOLUME_DOWN ->
                SheetPhrase.TURN_VOLUME_DOWN.of(generator, Frequencies.number(it.referenceVolts()));
        };
    }

    /**
     * A level of the generator.
     *
     * @param emfVolts volts EMF
     * @return for example {@code 35 uV EMF}
     */
    public static String level(double emfVolts) {
        boolean small = emfVolts < MILLI;
        String number = String.format(Locale.ROOT, "%.3g", emfVolts / (small ? 1e-6 : MILLI));
        return SheetPhrase.EMF.of(Frequencies.number(Double.parseDouble(number)), small ? "uV" : "mV");
    }

    /**
     * What a sheet was measured under.
     *
     * @param it the conditions
     * @return a line
     */
    public static String conditions(Conditions it) {
        String reference = it.isPower()
                ? SheetPhrase.POWER.of(
                        Frequencies.number(1e3 * OutputPower.watts(it.referenceVolts(), it.loadOhms())),
                        Frequencies.number(it.loadOhms()),
                        it.referenceVolts())
                : SheetPhrase.LEVEL.of(it.referenceVolts());
        return it.aerial().isEmpty() ? reference : SheetPhrase.AERIAL.of(reference, it.aerial());
    }

    /**
     * When it was measured.
     *
     * @param it before or after
     * @return a word or two
     */
    public static String occasion(Occasion it) {
        return (it == Occasion.BEFORE ? SheetPhrase.BEFORE : SheetPhrase.AFTER).of();
    }

    /**
     * The name of a figure.
     *
     * @param it which
     * @return without its value
     */
    public static String name(FigureKind it) {
        return switch (it) {
            case SENSITIVITY -> SheetPhrase.SENSITIVITY.of();
            case SIGNAL_TO_NOISE -> SheetPhrase.SIGNAL_TO_NOISE.of();
            case INPUT_FOR_TEN_DB -> SheetPhrase.INPUT_FOR_TEN_DB.of();
            case IMAGE_REJECTION -> SheetPhrase.IMAGE_REJECTION.of();
            case IF_REJECTION -> SheetPhrase.IF_REJECTION.of();
            case WIDTH_6_DB -> SheetPhrase.WIDTH_6_DB.of();
            case WIDTH_20_DB -> SheetPhrase.WIDTH_20_DB.of();
            case WIDTH_40_DB -> SheetPhrase.WIDTH_40_DB.of();
            case AVC -> SheetPhrase.AVC.of();
            case HUM -> SheetPhrase.HUM.of();
            case DISTORTION -> SheetPhrase.DISTORTION.of();
        };
    }

    static String figure(Figure it) {
        return SheetPhrase.FIGURE.of(name(it.kind()), Frequencies.plain(it.dialHz()), value(it), uncertainty(it));
    }

    /**
     * The value of a figure.
     *
     * @param it the figure
     * @return with its unit, or that it was not measured
     */
    public static String value(Figure it) {
        return switch (it.outcome()) {
            case MEASURED -> plain(it);
            case AT_LEAST -> SheetPhrase.AT_LEAST.of(plain(it));
            case AT_MOST -> SheetPhrase.AT_MOST.of(plain(it));
            case NOT_MEASURED -> SheetPhrase.NOT_MEASURED.of();
        };
    }

    private static String plain(Figure it) {
        return switch (it.kind().counts()) {
            case VOLTS_EMF -> level(it.value());
            case DECIBELS -> SheetPhrase.DECIBELS.of(it.value());
            case HERTZ -> SheetPhrase.KILOHERTZ.of(it.value() / 1e3);
            case RATIO -> SheetPhrase.PERCENT.of(100 * it.value());
        };
    }

    static String uncertainty(Figure it) {
        return it.outcome() == Figure.Outcome.MEASURED ? SheetPhrase.LIMITED.of(spread(it), limit(it)) : "";
    }

    /**
     * What a figure is uncertain by.
     *
     * @param it the figure
     * @return one standard deviation; empty where it is a bound or was not measured
     */
    public static String spread(Figure it) {
        if (it.outcome() != Figure.Outcome.MEASURED) {
            return "";
        }
        return switch (it.kind().counts()) {
            case VOLTS_EMF, DECIBELS -> SheetPhrase.WITHIN.of(it.sigma());
            case HERTZ -> SheetPhrase.WITHIN_KILOHERTZ.of(it.sigma() / 1e3);
            case RATIO -> SheetPhrase.WITHIN_PERCENT.of(100 * it.sigma());
        };
    }

    /**
     * What limits a figure.
     *
     * @param it the figure
     * @return empty where it is a bound or was not measured
     */
    public static String limit(Figure it) {
        return it.outcome() == Figure.Outcome.MEASURED ? limit(it.limit()) : "";
    }

    /**
     * What is known of the generator's attenuator.
     *
     * @param it the conditions
     * @return a few words
     */
    public static String attenuator(Conditions it) {
        return Double.isNaN(it.attenuatorDb())
                ? SheetPhrase.ATTENUATOR_UNKNOWN.of()
                : SheetPhrase.ATTENUATOR_WITHIN.of(Frequencies.number(it.attenuatorDb()));
    }

    private static String limit(Limit it) {
        return switch (it) {
            case LAST_DIGIT -> SheetPhrase.LAST_DIGIT.of();
            case NOISE -> SheetPhrase.NOISE.of();
            case INTERPOLATION -> SheetPhrase.INTERPOLATION.of();
            case ATTENUATOR -> SheetPhrase.ATTENUATOR.of();
            case DIAL -> SheetPhrase.DIAL.of();
        };
    }
}

package org.slugpeak.cli.words;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.AvcLine;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.reading.Measurand;

/** Where the meter goes, on which volts, and what stands on the gain control line. All methods are pure. */
final class MeterWords {

    private MeterWords() {}

    /** In the plan's own words, where it has some; empty where nothing is said of the meter. */
    static String point(Setup setup) {
        Optional<MeterPoint> point = setup.particulars().point();
        String words =
                setup.meterPoint().isEmpty() ? point.map(MeterWords::name).orElse("") : setup.meterPoint();
        return point.map(it -> volts(it).of(words)).orElse(words);
    }

    private static Phrase volts(MeterPoint point) {
        return point.measurand().equals(Measurand.AC_VOLTS) ? Phrase.ON_AC : Phrase.ON_DC;
    }

    private static String name(MeterPoint point) {
        return switch (point) {
            case DETECTOR -> Phrase.POINT_DETECTOR.of();
            case AVC -> Phrase.POINT_AVC.of();
            case VOICE_COIL -> Phrase.POINT_VOICE_COIL.of();
            case LIMITER_GRID -> Phrase.POINT_LIMITER_GRID.of();
            case RATIO_DETECTOR -> Phrase.POINT_RATIO_DETECTOR.of();
            case DISCRIMINATOR -> Phrase.POINT_DISCRIMINATOR.of();
        };
    }

    static String avc(AvcLine line) {
        OptionalDouble volts = line.heldAtVolts();
        if (volts.isEmpty()) {
            return Phrase.AVC_FREE.of();
        }
        return volts.getAsDouble() == 0
                ? Phrase.AVC_TO_CHASSIS.of()
                : Phrase.AVC_HELD.of(Frequencies.number(volts.getAsDouble()));
    }
}

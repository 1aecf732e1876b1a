package org.slugpeak.core.rehearsal;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.PlanStep;

/** At which point of the set a step's meter stands: as the plan says, or else as its words tell. */
final class Terminals {

    /** The first that matches is taken. */
    private static final Map<MeterPoint, Pattern> WORDS = words();

    private Terminals() {}

    private static Map<MeterPoint, Pattern> words() {
        Map<MeterPoint, Pattern> words = new LinkedHashMap<>();
        words.put(MeterPoint.LIMITER_GRID, Pattern.compile("limiter"));
        words.put(MeterPoint.RATIO_DETECTOR, Pattern.compile("electrolytic|ratio detector|half"));
        words.put(MeterPoint.AVC, Pattern.compile("\\bavc\\b|\\bagc\\b|gain control|s-meter|tuning eye"));
        words.put(MeterPoint.VOICE_COIL, Pattern.compile("voice coil|speaker|headphone|dummy load|output|\\bac\\b"));
        words.put(MeterPoint.DISCRIMINATOR, Pattern.compile("discriminator"));
        return words;
    }

    static MeterPoint of(PlanStep step) {
        if (!step.goal().hasDecibels()) {
            return MeterPoint.DISCRIMINATOR;
        }
        if (step.goal().isHeard()) {
            return MeterPoint.VOICE_COIL;
        }
        String text = step.setup().meterPoint().toLowerCase(Locale.ROOT);
        return step.setup()
                .particulars()
                .point()
                .orElseGet(() -> WORDS.entrySet().stream()
                        .filter(each -> each.getValue().matcher(text).find())
                        .map(Map.Entry::getKey)
                        .findFirst()
                        .orElse(MeterPoint.DETECTOR));
    }
}

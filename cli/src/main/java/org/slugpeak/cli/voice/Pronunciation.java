package org.slugpeak.cli.voice;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slugpeak.cli.moment.Level;
import org.slugpeak.cli.words.VoicePhrase;

/** Turns what is written into what a voice can say: units in full, and decibels as people count them. All methods are pure. */
final class Pronunciation {

    private static final Map<String, VoicePhrase> UNITS = Map.ofEntries(
            Map.entry("dB", VoicePhrase.UNIT_DB),
            Map.entry("kHz", VoicePhrase.UNIT_KHZ),
            Map.entry("Hz", VoicePhrase.UNIT_HZ),
            Map.entry("MHz", VoicePhrase.UNIT_MHZ),
            Map.entry("V", VoicePhrase.UNIT_V),
            Map.entry("mV", VoicePhrase.UNIT_MV),
            Map.entry("uV", VoicePhrase.UNIT_UV),
            Map.entry("uF", VoicePhrase.UNIT_UF),
            Map.entry("pF", VoicePhrase.UNIT_PF),
            Map.entry("kohm", VoicePhrase.UNIT_KOHM),
            Map.entry("Mohm", VoicePhrase.UNIT_MOHM),
            Map.entry("s", VoicePhrase.UNIT_S));

    /** A unit stands behind a number and a blank. */
    private static final Pattern UNIT = Pattern.compile("(?<=\\d )(dB|kHz|Hz|MHz|V|mV|uV|uF|pF|kohm|Mohm|s)\\b");

    /** At the end of what stands behind a point, with the point where there is nothing else; nobody says them. */
    private static final Pattern ZEROS =
            Pattern.compile("(?<![\\d.])(\\d+\\.\\d*?[1-9]|\\d+(?=\\.0))\\.?0+(?!\\d|\\.\\d)");

    private static final double TENTH_DB = 0.1;

    private Pronunciation() {}

    static String of(String written) {
        String said = UNIT.matcher(written).replaceAll(unit -> Matcher.quoteReplacement(spoken(unit.group())));
        return ZEROS.matcher(said)
                .replaceAll("$1")
                .replace("+-", " " + VoicePhrase.PLUS_MINUS.of() + " ")
                .replaceAll("([?!.,;:]) ?[(]", "$1 ")
                .replaceAll(" ?[(]", ", ")
                .replace(")", "")
                .replace(';', '.')
                .replaceAll(" +", " ");
    }

    private static String spoken(String unit) {
        VoicePhrase phrase = UNITS.get(unit);
        return phrase == null ? unit : phrase.of();
    }

    /** How far back, in tenths of a decibel below one, else in decibels. */
    static String back(double distanceDb) {
        if (!(distanceDb < Level.FARTHEST_DB)) {
            return VoicePhrase.BACK_FAR.of();
        }
        return VoicePhrase.BACK.of(decibels(distanceDb));
    }

    private static String decibels(double distanceDb) {
        long tenths = Math.round(distanceDb / TENTH_DB);
        if (tenths == 0) {
            return VoicePhrase.LESS_THAN_A_TENTH.of();
        }
        if (tenths == 1) {
            return VoicePhrase.ONE_TENTH.of();
        }
        if (tenths == 10) {
            return VoicePhrase.ONE_DECIBEL.of();
        }
        return tenths < 10
                ? VoicePhrase.TENTHS.of(tenths)
                : VoicePhrase.DECIBELS.of(String.format(Locale.ROOT, "%.1f", distanceDb));
    }
}

package org.slugpeak.core.level;

import java.util.Locale;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.StepCheck.Level;
import org.slugpeak.core.reading.Rounded;

/** What the levels of a check mean. The limits are common practice, no source, except where a formula is named. */
final class CheckJudge {

    private static final double WARN_SLOPE = 0.8;
    private static final double REFUSE_SLOPE = 0.5;
    private static final double WEAK_SLOPE = 1.3;
    private static final double HUM_SHARE = 0.03;
    private static final double SERIES_OHM = 1e6;
    private static final double GOOD_METER_OHM = 5e6;
    private static final double NO_EFFECT_DB = 0.2;
    private static final double NARROW_SKIRT_DB = 13;
    private static final double UNEQUAL_SKIRTS_DB = 1.5;
    private static final double HARMONIC_DROP_DB = 3;
    private static final double NO_IMAGE_DB = 36;

    private final LevelListener listener;
    private final Standing standing;

    CheckJudge(LevelListener listener, Standing standing) {
        this.listener = listener;
        this.standing = standing;
    }

    /** How far a reading can be believed after the check of the level. */
    enum Following {
        GOOD,
        DOUBTFUL,
        REFUSED
    }

    Following level(long tNanos, double before, double after) {
        double slope = db(after / before) / db(0.5);
        if (slope < WARN_SLOPE) {
            listener.flattening(
                    tNanos,
                    slope < REFUSE_SLOPE
                            ? say("the reading does not follow the generator (%.2f): no peak can be called", slope)
                            : say("the reading hardly follows the generator (%.2f): peaks are blunt", slope));
            standing.raise(tNanos, Suspicion.TOO_STRONG, slope);
            return slope < REFUSE_SLOPE ? Following.REFUSED : Following.DOUBTFUL;
        }
        standing.clear(tNanos, Suspicion.TOO_STRONG);
        String verdict = slope > WEAK_SLOPE
                ? "the reading falls faster than the generator (%.2f): too weak, or the square law of the detector"
                : "the reading follows the generator (%.2f)";
        listener.advice(tNanos, "level-check", say(verdict, slope), slope);
        return Following.GOOD;
    }

    void rest(long tNanos, Level before, Level rest) {
        listener.advice(
                tNanos,
                "rest",
                say("resting at %.3f: subtracted from now on in all decibels", rest.value()),
                rest.value());
        boolean hums = rest.scatter() > HUM_SHARE * Math.abs(before.value() - rest.value());
        decide(tNanos, hums, Suspicion.HUM, rest.scatter());
    }

    /** A meter of R ohm behind a source of Rs reads r = (R + Rs)/(R + Rs + 1 Mohm) of before; Ohm's law. */
    void loading(long tNanos, double before, double after) {
        double share = Math.min(0.999, after / before);
        double ohm = SERIES_OHM * share / (1 - share);
        listener.advice(tNanos, "loading", say("meter and source have about %.1f Mohm together", ohm / 1e6), ohm);
        decide(tNanos, ohm < GOOD_METER_OHM, Suspicion.LOADING, ohm);
    }

    void effect(long tNanos, double before, double after, Suspicion ifNone) {
        double change = db(after / before);
        listener.advice(
                tNanos, "effect", say("half a turn changes the reading by %+.1f dB", Rounded.to(change, 1)), change);
        decide(tNanos, Math.abs(change) < NO_EFFECT_DB, ifNone, change);
    }

    void skirts(long tNanos, double centre, double above, double below) {
        double up = db(centre / above);
        double down = db(centre / below);
        listener.advice(
                tNanos,
                "skirts",
                say("5 kHz above %.1f dB down, below %.1f dB down: ", Rounded.to(up, 1), Rounded.to(down, 1))
                        + skirtsInWords(up, down),
                up - down);
        double mean = (up + down) / 2;
        decide(tNanos, mean > NARROW_SKIRT_DB, Suspicion.REGENERATION, mean);
    }

    private static String skirtsInWords(double up, double down) {
        if (up + down <= 0) {
            return "the skirts do not fall, so the generator is not on a peak";
        }
        if (Math.abs(up - down) <= UNEQUAL_SKIRTS_DB) {
            return "the skirts fall alike";
        }
        return "the middle lies " + (up > down ? "low" : "high") + ", another round helps";
    }

    /** Centre of the three powers at -10, 0 and +10 kHz. */
    void otherIf(long tNanos, double centre, double below, double above) {
        double lower = below * below;
        double upper = above * above;
        double offsetKilohertz = 10 * (upper - lower) / (upper + lower + centre * centre);
        listener.advice(
                tNanos,
                "if-centre",
                say("the response is centred about %+.1f kHz from the generator", Rounded.to(offsetKilohertz, 1)),
                offsetKilohertz);
        decide(tNanos, Math.abs(offsetKilohertz) > 5, Suspicion.WRONG_IF, offsetKilohertz);
    }

    /** The mean of both sides: what a set that is not quite on tune loses on one side it gains on the other. */
    void harmonic(long tNanos, double centre, double above, double below) {
        double up = db(centre / above);
        double down = db(centre / below);
        double drop = (up + down) / 2;
        listener.advice(
                tNanos,
                "harmonic",
                say("2 kHz off costs %.1f dB above, %.1f dB below", Rounded.to(up, 1), Rounded.to(down, 1)),
                drop);
        decide(tNanos, drop > HARMONIC_DROP_DB, Suspicion.HARMONIC, drop);
    }

    void image(long tNanos, double before, double after) {
        double drop = db(before / after);
        decide(tNanos, drop > NO_IMAGE_DB, Suspicion.IMAGE, drop);
        if (drop <= NO_IMAGE_DB) {
            listener.advice(tNanos, "image", say("heard %.0f dB weaker at the image: the right side", drop), drop);
        }
    }

    private void decide(long tNanos, boolean bad, Suspicion suspicion, double amount) {
        if (bad) {
            standing.raise(tNanos, suspicion, amount);
        } else {
            standing.clear(tNanos, suspicion);
        }
    }

    private static double db(double ratio) {
        return Decibels.of(Math.max(1e-6, ratio));
    }

    private static String say(String format, Object... figures) {
        return String.format(Locale.ROOT, format, figures);
    }
}

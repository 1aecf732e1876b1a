package org.slugpeak.cli.words;

import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Weak;

/** What is to be known of the signal, and what to do about it. Immutable. */
final class CautionSentences implements Caution.Matcher<String> {

    @Override
    public String overload(Overload it) {
        return switch (it.cause()) {
            case OVER_RANGE -> Phrase.OVER_RANGE.of();
            case FULL_SCALE -> Phrase.FULL_SCALE.of(SafeHands.safe());
            case CLIPPING -> Phrase.CLIPPING.of();
            case FLATTENING ->
                (it.slope() < CheckFigures.REFUSE_SLOPE ? Phrase.DOES_NOT_FOLLOW : Phrase.HARDLY_FOLLOWS)
                        .of(it.slope());
        };
    }

    @Override
    public String overloadCleared(OverloadCleared it) {
        return "";
    }

    @Override
    public String weak(Weak it) {
        return Phrase.WEAK.of();
    }

    @Override
    public String drift(Drift it) {
        return "";
    }

    @Override
    public String settled(Caution.Settled it) {
        return Phrase.SETTLED.of();
    }

    @Override
    public String suspected(Caution.Suspected it) {
        return Phrase.SUSPECTED.of(cause(it.suspicion()), next(it.suspicion()));
    }

    @Override
    public String noLongerSuspected(Caution.NoLongerSuspected it) {
        return Phrase.NO_LONGER_SUSPECTED.of(cause(it.suspicion()));
    }

    @Override
    public String widePeak(Caution.WidePeak it) {
        return Phrase.WIDE_PEAK.of(it.times());
    }

    @Override
    public String restMissing(Caution.RestMissing it) {
        return Phrase.REST_MISSING.of();
    }

    @Override
    public String slowReadings(Caution.SlowReadings it) {
        return Phrase.SLOW_READINGS.of(it.intervalSeconds());
    }

    @Override
    public String windowMissed(Caution.WindowMissed it) {
        return it.missedDb() < 0
                ? Phrase.WINDOW_NOT_REACHED.of(-it.missedDb(), SafeHands.safe())
                : Phrase.WINDOW_EXCEEDED.of(it.missedDb(), SafeHands.safe());
    }

    @Override
    public String checked(Caution.Checked it) {
        CheckFigures found = it.figures();
        return switch (it.check()) {
            case REST -> Phrase.RESTING.of(found.figure());
            case LEVEL ->
                (found.figure() > CheckFigures.WEAK_SLOPE ? Phrase.FALLS_FASTER : Phrase.FOLLOWS).of(found.figure());
            case LOADING -> Phrase.LOADS.of(found.figure() / 1e6);
            case EFFECT -> Phrase.HALF_A_TURN.of(Rounded.to(found.figure(), 1));
            case SKIRTS ->
                Phrase.SKIRTS.of(
                        Frequencies.plain(found.skirtHz()),
                        Rounded.to(found.upDb(), 1),
                        Rounded.to(found.downDb(), 1),
                        skirts(found));
            case OTHER_IF -> Phrase.IF_CENTRE.of(Rounded.to(found.figure(), 1));
            case HARMONIC -> Phrase.OFF_TUNE.of(Rounded.to(found.upDb(), 1), Rounded.to(found.downDb(), 1));
            case IMAGE -> Phrase.IMAGE_IS_WEAKER.of(found.figure());
            case DETECTOR_LAW ->
                Double.isNaN(found.figure()) ? Phrase.NO_LAW.of() : Phrase.LAW_MEASURED.of(found.figure());
        };
    }

    private static String skirts(CheckFigures found) {
        if (found.upDb() + found.downDb() <= 0) {
            return Phrase.NO_SKIRTS.of();
        }
        if (Math.abs(found.upDb() - found.downDb()) <= CheckFigures.UNEQUAL_SKIRTS_DB) {
            return Phrase.SKIRTS_ALIKE.of();
        }
        return (found.upDb() > found.downDb() ? Phrase.MIDDLE_LOW : Phrase.MIDDLE_HIGH).of();
    }

    private static String cause(Suspicion suspicion) {
        return switch (suspicion) {
            case TOO_STRONG -> Phrase.TOO_STRONG_CAUSE.of();
            case WRONG_IF -> Phrase.WRONG_IF_CAUSE.of();
            case IMAGE -> Phrase.IMAGE_CAUSE.of();
            case HARMONIC -> Phrase.HARMONIC_CAUSE.of();
            case SLUG_END -> Phrase.SLUG_END_CAUSE.of();
            case MICA -> Phrase.MICA_CAUSE.of();
            case PADDER -> Phrase.PADDER_CAUSE.of();
            case WINDING -> Phrase.WINDING_CAUSE.of();
            case LOADING -> Phrase.LOADING_CAUSE.of();
            case REGENERATION -> Phrase.REGENERATION_CAUSE.of();
            case HUM -> Phrase.HUM_CAUSE.of();
            case LIMITER -> Phrase.LIMITER_CAUSE.of();
        };
    }

    private static String next(Suspicion suspicion) {
        return switch (suspicion) {
            case TOO_STRONG -> Phrase.TOO_STRONG_NEXT.of();
            case WRONG_IF -> Phrase.WRONG_IF_NEXT.of();
            case IMAGE -> Phrase.IMAGE_NEXT.of();
            case HARMONIC -> Phrase.HARMONIC_NEXT.of();
            case SLUG_END -> Phrase.SLUG_END_NEXT.of();
            case MICA -> SafeHands.leaveOff(Phrase.MICA_NEXT.of());
            case PADDER -> SafeHands.leaveOff(Phrase.PADDER_NEXT.of());
            case WINDING -> SafeHands.leaveOff(Phrase.WINDING_NEXT.of());
            case LOADING -> SafeHands.at(Phrase.LOADING_NEXT.of());
            case REGENERATION -> SafeHands.leaveOff(Phrase.REGENERATION_NEXT.of());
            case HUM -> SafeHands.leaveOff(Phrase.HUM_NEXT.of());
            case LIMITER -> Phrase.LIMITER_NEXT.of();
        };
    }
}

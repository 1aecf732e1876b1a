package org.slugpeak.cli.words;

import org.slugpeak.core.session.Sound;
import org.slugpeak.core.signal.ModulationTone;

/** What is heard of audio beside its level. Immutable. */
final class SoundSentences implements Sound.Matcher<String> {

    @Override
    public String tone(Sound.Tone it) {
        return Phrase.TONE.of(it.hz(), 1000 * it.latencySeconds(), it.bandwidthHz());
    }

    @Override
    public String noTone(Sound.NoTone it) {
        return Phrase.NO_TONE.of();
    }

    @Override
    public String perhapsHum(Sound.PerhapsHum it) {
        return Phrase.PERHAPS_HUM.of(modulation(it.mainsHz()));
    }

    @Override
    public String humUnderTone(Sound.HumUnderTone it) {
        return Phrase.HUM_UNDER_TONE.of(it.harmonic(), it.mainsHz(), it.errorDb(), modulation(it.mainsHz()));
    }

    /** What to set the modulation to, so that hum disturbs it least. */
    private static String modulation(double mainsHz) {
        return Double.isNaN(mainsHz)
                ? Phrase.MODULATION_UNKNOWN_MAINS.of((int) ModulationTone.clearOf(50), (int) ModulationTone.clearOf(60))
                : Phrase.MODULATION_HZ.of((int) ModulationTone.clearOf(mainsHz));
    }

    @Override
    public String purity(Sound.Purity it) {
        String hum =
                Double.isNaN(it.humBelowDb()) ? Phrase.HUM_NOT_SEEN.of() : Phrase.HUM_BELOW_TONE.of(it.humBelowDb());
        return Phrase.PURITY.of(it.sinadDb(), 100 * it.distortion(), hum);
    }

    @Override
    public String distorted(Sound.Distorted it) {
        return Phrase.DISTORTED.of(100 * it.distortion());
    }

    @Override
    public String outputReached(Sound.OutputReached it) {
        return Phrase.OUTPUT_REACHED.of(it.standardMilliwatts(), it.milliwatts());
    }

    @Override
    public String clips(Sound.Clips it) {
        return switch (it.cause()) {
            case NONE -> "";
            case INPUT -> Phrase.INPUT_CLIPS.of(SafeHands.safe());
            case SET -> Phrase.SET_CLIPS.of();
        };
    }
}

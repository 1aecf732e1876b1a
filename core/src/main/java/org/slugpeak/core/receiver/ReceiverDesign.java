package org.slugpeak.core.receiver;

import java.util.Map;

/**
 * All that does not change while a receiver is aligned. Immutable; any thread may use it.
 *
 * @param intermediateHz what the IF transformers are meant for
 * @param first IF transformer with its slugs at their working positions
 * @param second IF transformer with its slugs at their working positions
 * @param conversionSiemens of the converter, from grid to first transformer
 * @param stageSiemens of the IF valve without gain control
 * @param detector with its load and contact potential
 * @param gainControl acts on converter and IF valve together
 * @param slug law of all slugs
 * @param front aerial circuit and oscillator
 * @param audio from detector to voice coil
 * @param noiseOhm equivalent noise resistance at the converter grid
 * @param hand what hand and tool do to the circuit that they are at
 * @param misalignment where the parts stand at first, in turns from their working positions
 */
public record ReceiverDesign(
        double intermediateHz,
        CoupledPair first,
        CoupledPair second,
        double conversionSiemens,
        double stageSiemens,
        EnvelopeDetector detector,
        GainControl gainControl,
        SlugLaw slug,
        FrontEnd front,
        AudioStage audio,
        double noiseOhm,
        HandEffect hand,
        Map<Part, Double> misalignment) {

    public ReceiverDesign {
        misalignment = Map.copyOf(misalignment);
    }

    /**
     * The same set in front of another hand.
     *
     * @param newHand and its tool
     * @return a copy
     */
    public ReceiverDesign withHand(HandEffect newHand) {
        return new ReceiverDesign(
                intermediateHz,
                first,
                second,
                conversionSiemens,
                stageSiemens,
                detector,
                gainControl,
                slug,
                front,
                audio,
                noiseOhm,
                newHand,
                misalignment);
    }
}

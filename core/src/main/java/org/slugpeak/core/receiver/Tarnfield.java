package org.slugpeak.core.receiver;

import java.util.Map;

/**
 * The invented table set Tarnfield 54A: 6BE6, 6BA6, 6AT6, 6AQ5, 6X4; 455 kHz IF; medium and short wave. Each figure says
 * where it comes from; none describes a set that was ever sold.
 */
public final class Tarnfield {

    /** The usual American and later British intermediate frequency; common practice. */
    public static final double IF_HZ = 455e3;

    /** What the detector should rise above rest while adjusting, volts: common practice, no source. */
    public static final double WORKING_VOLTS = 1.0;

    /** Within the 50 to 90 usual for a loaded IF coil; common practice, from memory. */
    private static final double IF_Q = 70;

    /** Across each IF coil; invented, usual size. */
    private static final double IF_FARAD = 110e-12;

    /** (k Q) squared: just under critical; invented. */
    private static final double COUPLING_SQUARED = 0.9;

    /** Conversion transconductance of a 6BE6, about 0.475 mS; from memory. */
    private static final double CONVERSION_SIEMENS = 0.475e-3;

    /** A 6BA6 at the bias of this set; invented, usual size. */
    private static final double STAGE_SIEMENS = 2.48e-3;

    /** Load of the detector, usual size; invented. */
    private static final double LOAD_OHM = 470e3;

    /**
     * The diodes of a 6AT6: a cathode of 1100 K and 3.2e-5 A/V^1.5, about 1 mA at 10 V; from memory. They leave 0.22 V without a
     * signal, in the 0.1 to 1 V usual; from memory. Its damping is part of the Q above: the source counts as ideal.
     */
    private static final EnvelopeDetector DETECTOR =
            EnvelopeDetector.of(new DiodeDetector(ThermionicDiode.resting(1100, 3.2e-5, 0.22, LOAD_OHM), LOAD_OHM, 0));

    /** Equivalent noise resistance of a 6BE6 as converter, about 0.2 megohm; from memory. */
    private static final double NOISE_OHM = 200e3;

    /** A plastic tool in a closed can shifts the circuit by -0.03 kHz, the hand outside by nothing; made up. */
    private static final double INSULATED_CAN_HZ = 0.03e3;

    /** A metal blade in the coil shifts it by -0.8 kHz; the figure of the reference data set, from memory. */
    private static final double METAL_CAN_HZ = 0.8e3;

    /**
     * A hand on a metal tool adds this to an oscillator that stands open, which lowers it by 0.8 kHz with the dial at 1 MHz (the
     * figure of the reference data set, from memory) and by more where there is less capacitance.
     */
    private static final double METAL_OPEN_FARAD = 0.18e-12;

    /** The length of an insulated tool keeps the hand away: a tenth of it; made up. */
    private static final double INSULATED_OPEN_FARAD = 0.1 * METAL_OPEN_FARAD;

    /** An insulated alignment tool, as everybody should use. */
    public static final HandEffect INSULATED_TOOL = new HandEffect(2 * INSULATED_CAN_HZ / IF_HZ, INSULATED_OPEN_FARAD);

    /** A screwdriver. */
    public static final HandEffect METAL_TOOL = new HandEffect(2 * METAL_CAN_HZ / IF_HZ, METAL_OPEN_FARAD);

    private Tarnfield() {}

    /**
     * The set as it came to the bench: out of alignment, otherwise sound.
     *
     * @return its design
     */
    public static ReceiverDesign design() {
        SlugLaw law = slugLaw();
        return new ReceiverDesign(
                IF_HZ,
                transformer(),
                transformer(),
                CONVERSION_SIEMENS,
                STAGE_SIEMENS,
                DETECTOR,
                new GainControl(1.6, 7, 0.15),
                law,
                frontEnd(),
                new AudioStage(4.0, 3.2, 3e-3),
                NOISE_OHM,
                INSULATED_TOOL,
                misalignment(law));
    }

    /**
     * About 7 kHz a turn at the working position and a second position 5.5 turns on; both invented, of usual size.
     *
     * @return the law of its IF slugs
     */
    public static SlugLaw slugLaw() {
        return new SlugLaw(8.33, 0.176, 0.67);
    }

    private static CoupledPair transformer() {
        Tank tank = Tank.tuned(IF_HZ, IF_FARAD, IF_Q);
        return new CoupledPair(tank, tank, Math.sqrt(COUPLING_SQUARED) / IF_Q);
    }

    /**
     * The oscillator is the three-point design for 600, 1000 and 1400 kHz with 220 uH and 455 kHz (formulas of F. E. Terman,
     * Radio Engineers' Handbook, 1943); the rest is invented, of usual size.
     */
    private static FrontEnd frontEnd() {
        return new FrontEnd(
                220e-6,
                80,
                4,
                new LocalOscillator(124.8343e-6, 407.2836e-12, 10.2076e-12),
                60e-12,
                9e-12,
                0.05,
                new WarmUp(14e3, 540));
    }

    /**
     * Chosen so that peaking T2 top, T2 bottom, T1 top, T1 bottom in this order gains 8.08, 1.04, 5.56 and 3.27 dB.
     */
    private static Map<Part, Double> misalignment(SlugLaw law) {
        return Map.of(
                Part.T2_BOTTOM,
                law.turnsFor(0.018129),
                Part.T2_TOP,
                law.turnsFor(-0.037822),
                Part.T1_BOTTOM,
                law.turnsFor(0.031968),
                Part.T1_TOP,
                law.turnsFor(-0.021314),
                Part.C2,
                0.35,
                Part.C3,
                -1.5,
                Part.C1,
                0.5,
                Part.C5,
                0.25);
    }
}

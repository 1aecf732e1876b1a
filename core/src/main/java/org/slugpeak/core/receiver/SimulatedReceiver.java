package org.slugpeak.core.receiver;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.apache.commons.math3.complex.Complex;
import org.slugpeak.core.decibel.Decibels;

/**
 * A receiver on the bench: what is turned and fed goes in, what a meter would see comes out. It advances by
 * {@link #step(long)}; time comes only from there. The same seed and the same calls give the same voltages.
 *
 * <p>One thread at a time.
 */
public final class SimulatedReceiver implements SetOnBench {

    /** Amplitudes of the generator's harmonics relative to the fundamental; invented, usual for a service generator. */
    private static final double[] HARMONICS = {1, 0.05, 0.02};

    /** Loop gain of the regenerating IF stage when it is in tune; invented. */
    private static final double REGENERATION = 0.72;

    /** What still passes a transformer whose secondary is open: stray capacitance; invented. */
    private static final double STRAY = 0.02;

    private static final double LARGEST_TRAVEL_TURNS = 2.7;
    private static final double TRAVEL_STEP_TURNS = 0.002;

    /** Both slugs inside raise the coupling; by how much is invented. */
    private static final double COUPLING_INSIDE = 1.6;

    private final ReceiverDesign design;
    private final Set<Fault> faults;
    private final SplittableRandom random;
    private final MicaCapacitor mica;
    private final Map<Part, Double> turns = new EnumMap<>(Part.class);
    private final Complex tunedStrip;
    private final NoiseBand noise;

    private Generator generator;
    private double dialHz = 1620e3;
    private Optional<Part> handAt = Optional.empty();
    private double meterOhm = Double.POSITIVE_INFINITY;
    private double warmSeconds = 1800;
    private long lastNanos;
    private boolean stepped;
    private double controlVolts;
    private double carrierPeakVolts;
    private double riseVolts;

    /**
     * A receiver in its first state, half an hour warm, with the generator off.
     *
     * @param design what it is
     * @param faults seeded in it; those that lie with the bench are ignored
     * @param seed of its noise; any number
     */
    public SimulatedReceiver(ReceiverDesign design, Set<Fault> faults, long seed) {
        this.design = design;
        this.faults = Set.copyOf(faults);
        this.random = new SplittableRandom(seed);
        this.mica = new MicaCapacitor(random.split());
        for (Part part : Part.values()) {
            turns.put(part, design.misalignment().getOrDefault(part, 0.0));
        }
        this.generator = new Generator(design.intermediateHz(), 0, false, Generator.Lead.CONVERTER_GRID);
        this.noise = new NoiseBand(
                design.noiseOhm(),
                design.intermediateHz(),
                design.first().primary().q());
        this.tunedStrip = design.first()
                .transimpedance(design.intermediateHz())
                .multiply(design.second().transimpedance(design.intermediateHz()));
    }

    /**
     * Sets a part.
     *
     * @param part which
     * @param newTurns from its working position
     */
    public void set(Part part, double newTurns) {
        turns.put(part, newTurns);
    }

    /**
     * Where a part stands.
     *
     * @param part which
     * @return turns from its working position
     */
    public double turns(Part part) {
        return turns.getOrDefault(part, 0.0);
    }

    @Override
    public void feed(Generator newGenerator) {
        generator = newGenerator;
    }

    @Override
    public Generator generator() {
        return generator;
    }

    @Override
    public void tune(double newDialHz) {
        dialHz = newDialHz;
    }

    @Override
    public double dialHz() {
        return dialHz;
    }

    /**
     * Puts a hand with a tool into a can, or takes it away.
     *
     * @param part at which the tool is; empty for hands off
     */
    public void hand(Optional<Part> part) {
        handAt = part;
    }

    @Override
    public void load(double ohm) {
        meterOhm = ohm;
    }

    /**
     * Says how long set and generator have been on at time 0.
     *
     * @param seconds 0 for a cold start
     */
    public void warmFor(double seconds) {
        warmSeconds = seconds;
    }

    @Override
    public void step(long tNanos) {
        double seconds = stepped ? Math.max(0, tNanos - lastNanos) / 1e9 : 0;
        stepped = true;
        lastNanos = tNanos;
        if (faults.contains(Fault.MICA)) {
            mica.step(tNanos);
        }
        noise.follow(this::stripGain, stripState());
        double gain = design.gainControl().gain(controlVolts);
        carrierPeakVolts = Math.sqrt(2) * gridVolts() * gain;
        riseVolts = noisyRiseVolts(noise.outputVolts() * gain, seconds);
        double target = design.gainControl().targetVolts(riseVolts);
        controlVolts += (target - controlVolts)
                * -Math.expm1(-seconds / design.gainControl().timeConstantSeconds());
    }

    /**
     * What carrier and noise add to the rest, on average over a time. The average of a band of noise over a time holds as many
     * independent values as both multiplied (a strong carrier; noise alone has half as many again).
     */
    private double noisyRiseVolts(double noiseVolts, double seconds) {
        if (noiseVolts == 0) {
            return detector().riseVolts(carrierPeakVolts);
        }
        RiceEnvelope.Moments moments = new RiceEnvelope(carrierPeakVolts, noiseVolts).through(detector()::riseVolts);
        double values = Math.max(1, noise.bandwidthHz() * seconds);
        return Math.max(0, moments.mean() + moments.deviation() / Math.sqrt(values) * random.nextGaussian());
    }

    /** What the noise band depends on; a hundredth of a turn, and a hand in a can, make no difference to it. */
    private double[] stripState() {
        return new double[] {
            Math.rint(turns(Part.T1_BOTTOM) * 100),
            Math.rint(turns(Part.T1_TOP) * 100),
            Math.rint(turns(Part.T2_BOTTOM) * 100),
            Math.rint(turns(Part.T2_TOP) * 100),
            mica.fraction(),
            meterOhm
        };
    }

    /** Carrier at the detector for the noiseless signal and no gain control, RMS. */
    private double gridVolts() {
        if (generator.lead() == Generator.Lead.CONVERTER_GRID) {
            return generator.volts() * stripGain(generatorHz());
        }
        double oscillator = oscillatorHz();
        double power = 0;
        for (int n = 1; n <= HARMONICS.length; n++) {
            double signalHz = n * generatorHz();
            double volts = generator.volts()
                    * HARMONICS[n - 1]
                    * design.front().aerialResponse(signalHz, dialHz, trimmerTurns(Part.C1))
                    * stripGain(Math.max(1e3, Math.abs(signalHz - oscillator)));
            power += volts * volts;
        }
        return Math.sqrt(power);
    }

    private double generatorHz() {
        return generator.frequencyHz();
    }

    /**
     * Where the oscillator oscillates now.
     *
     * @return hertz
     */
    public double oscillatorHz() {
        double padder = faults.contains(Fault.PADDER) ? 0 : turns(Part.C3);
        // The padder stands in the same open circuit as the trimmer.
        double trimmer = trimmerTurns(Part.C2) + (isHandAt(Part.C3) ? handTurns() : 0);
        double tuned =
                design.front().oscillatorHz(dialHz, trimmer, padder, trimmerTurns(Part.C5), design.intermediateHz());
        double drift = design.front().drift().driftBetweenHz(1800, warmSeconds + lastNanos / 1e9);
        return tuned + drift * dialHz / 1e6;
    }

    /**
     * What is missing to the most that one slug can give while all others stay.
     *
     * @param part a slug of an IF transformer
     * @return decibels, 0 or more
     */
    public double lossDb(Part part) {
        double stands = turns(part);
        double now = stripGain(design.intermediateHz());
        double best = now;
        for (double t = -LARGEST_TRAVEL_TURNS; t <= LARGEST_TRAVEL_TURNS; t += TRAVEL_STEP_TURNS) {
            set(part, t);
            best = Math.max(best, stripGain(design.intermediateHz()));
        }
        set(part, stands);
        return Decibels.of(best / now);
    }

    /**
     * What is missing to the set with all its slugs at their working positions.
     *
     * @return decibels; negative for an over-coupled set that stands on a hump
     */
    public double lossDb() {
        SimulatedReceiver aligned = new SimulatedReceiver(design, faults, 0);
        for (Part part : Part.values()) {
            aligned.set(part, 0);
        }
        aligned.load(meterOhm);
        double now = stripGain(design.intermediateHz());
        return Decibels.of(aligned.stripGain(design.intermediateHz()) / now);
    }

    /**
     * What the generator must give for a wanted rise at the detector, as everything stands and without gain control.
     *
     * @param riseVolts above rest; positive
     * @return volts, RMS
     */
    public double generatorVoltsFor(double riseVolts) {
        Generator stands = generator;
        generator = stands.withVolts(1);
        double gain = gridVolts();
        generator = stands;
        return detector().carrierPeakVolts(riseVolts) / Math.sqrt(2) / gain;
    }

    /**
     * How the IF strip performs now.
     *
     * @return sensitivity and response
     */
    public IfPerformance performance() {
        return IfPerformance.of(this::stripGain, design.detector(), design.intermediateHz());
    }

    /**
     * Gain from converter grid to detector without gain control.
     *
     * @param frequencyHz of a signal at the grid, or after conversion
     * @return factor, 0 or more
     */
    public double stripGain(double frequencyHz) {
        Complex first = transformer(design.first(), Part.T1_BOTTOM, Part.T1_TOP, mica.fraction())
                .transimpedance(frequencyHz);
        Complex strip = first.multiply(secondTransimpedance(frequencyHz));
        if (faults.contains(Fault.REGENERATION)) {
            strip = regenerated(strip);
        }
        return strip.abs() * design.conversionSiemens() * design.stageSiemens();
    }

    private Complex secondTransimpedance(double frequencyHz) {
        double damping = meterOhm / 2;
        CoupledPair pair = transformer(design.second(), Part.T2_BOTTOM, Part.T2_TOP, 0);
        if (!Double.isInfinite(damping)) {
            pair = pair.withSecondaryDamped(damping);
        }
        if (faults.contains(Fault.SECONDARY)) {
            // With the secondary open the primary alone is left, and what its stray capacitance passes on.
            double q = pair.primary().q();
            double peak =
                    q * 2 * Math.PI * design.intermediateHz() * pair.primary().inductanceHenry();
            return new SingleTuned(pair.primary().resonanceHz(), q)
                    .response(frequencyHz)
                    .multiply(STRAY * peak);
        }
        return pair.transimpedance(frequencyHz);
    }

    private Complex regenerated(Complex strip) {
        Complex relative = strip.divide(tunedStrip);
        return strip.divide(Complex.ONE.subtract(relative.multiply(REGENERATION)));
    }

    private CoupledPair transformer(CoupledPair pair, Part primary, Part secondary, double extraPrimary) {
        boolean inside = isInside(primary) || isInside(secondary);
        CoupledPair coupled = inside ? pair.withCoupling(pair.coupling() * COUPLING_INSIDE) : pair;
        return coupled.withSlugs(change(primary) + extraPrimary, change(secondary));
    }

    private boolean isInside(Part part) {
        return turns(part) > design.slug().secondPositionTurns() / 2;
    }

    private double change(Part part) {
        double hand = isHandAt(part) ? design.hand().inductanceFraction() : 0;
        return design.slug().inductanceChange(turns(part)) + hand;
    }

    private boolean isHandAt(Part part) {
        return handAt.equals(Optional.of(part));
    }

    /** A trimmer of an open circuit; a hand there counts as so much more of it. */
    private double trimmerTurns(Part part) {
        return turns(part) + (isHandAt(part) ? handTurns() : 0);
    }

    private double handTurns() {
        return design.hand().farad() / design.front().trimmerFaradPerTurn();
    }

    private EnvelopeDetector detector() {
        return design.detector();
    }

    /**
     * Voltage across the detector load, with the rest.
     *
     * @return volts; negative
     */
    public double detectorVolts() {
        return -(detector().restVolts() + riseVolts);
    }

    @Override
    public double directVolts() {
        return detectorVolts();
    }

    @Override
    public double voiceCoilVolts() {
        return design.audio().voiceCoilVolts(audioPeak(), humAtVoiceCoil());
    }

    @Override
    public boolean clips() {
        return design.audio().clips(audioPeak());
    }

    @Override
    public double humVolts() {
        return faults.contains(Fault.HUM) ? Tarnfield.WORKING_VOLTS / 10 : 0;
    }

    private double humAtVoiceCoil() {
        return humVolts() * design.audio().gain() / Math.sqrt(2);
    }

    private double audioPeak() {
        return generator.modulated() ? detector().audioPeakVolts(carrierPeakVolts, 0.3) : 0;
    }
}

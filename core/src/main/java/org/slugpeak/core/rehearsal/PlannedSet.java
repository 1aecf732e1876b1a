package org.slugpeak.core.rehearsal;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.receiver.Discriminator;
import org.slugpeak.core.receiver.EnvelopeDetector;
import org.slugpeak.core.receiver.GainControl;
import org.slugpeak.core.receiver.Generator;
import org.slugpeak.core.receiver.NoiseBand;
import org.slugpeak.core.receiver.NoisyCarrier;
import org.slugpeak.core.receiver.SetOnBench;
import org.slugpeak.core.word.Refused;

/**
 * A set made up from a plan, out of alignment. The same plan, seed and calls give the same voltages. Time comes only from
 * {@link #step(long)}.
 *
 * <p>One thread at a time.
 */
public final class PlannedSet implements SetOnBench {

    /** Equivalent noise resistance of a pentagrid converter, from memory; that of the demonstration set. */
    private static final double CONVERTER_NOISE_OHM = 200e3;

    /** Of the triode or pentode that mixes in a set for very high frequencies, from memory. */
    private static final double MIXER_NOISE_OHM = 3e3;

    /** From here on a strip has such a mixer before it. */
    private static final double MIXER_HZ = 2e6;

    /** That of the demonstration set. */
    private static final GainControl CONTROL = new GainControl(1.6, 7, 0.15);

    /** No service generator gives more. */
    private static final double MOST_VOLTS = 0.1;

    /** So much more than is wanted a person gives a signal that is still to be found. */
    private static final double LOUD = 4;

    private final List<PlannedScene> scenes;
    private final Circuits circuits;
    private final Map<IfStrip, NoiseBand> noises;
    private NoisyCarrier rises;
    private final NoisyCarrier grids;
    private final NoisyCarrier peaks;
    private final VoiceCoil coil;
    private final boolean limits;
    private final Truth truth;
    private final Reception reception;

    private PlannedScene scene;
    private Generator generator;
    private double dialHz;
    private boolean on = true;
    private boolean clamped;
    private GainControl control = CONTROL;
    private long lastNanos;
    private boolean stepped;
    private double controlVolts;
    private double slowVolts;
    private double peakVolts;
    private double pointVolts;
    private double seconds;

    private PlannedSet(
            List<PlannedScene> scenes, Circuits circuits, Map<IfStrip, NoiseBand> noises, SplittableRandom random) {
        this.scenes = scenes;
        this.circuits = circuits;
        this.noises = noises;
        this.rises = new NoisyCarrier(Detection::riseVolts, random.split());
        this.peaks = new NoisyCarrier(DoubleUnaryOperator.identity(), random.split());
        this.grids = new NoisyCarrier(Detection::gridVolts, random.split());
        this.coil = new VoiceCoil(random.split());
        this.limits = scenes.stream().anyMatch(each -> each.point() == MeterPoint.LIMITER_GRID);
        this.truth = new Truth(circuits);
        this.reception = new Reception(circuits);
        this.scene = scenes.get(0);
        this.dialHz = scene.dialHz();
        this.generator = new Generator(circuits.fedHz(scene), 0, scene.isModulated(), scene.lead());
    }

    /**
     * Builds the set of a plan and puts it out of alignment.
     *
     * @param plan whose adjusters it has
     * @param seed of what is out by how much, and of the noise; any number
     * @return the set, set up for the plan's first step, with the generator off
     * @throws Refused where a step cannot be played, with one line that names it
     */
    public static PlannedSet of(Plan plan, long seed) throws Refused {
        return coupled(plan, seed, StripBuilder.KAPPA);
    }

    /**
     * The same with transformers of another coupling, where the plan says nothing of it.
     *
     * @param plan whose adjusters it has
     * @param seed of what is out by how much, and of the noise; any number
     * @param kappa in units of the critical coupling; positive
     * @return the set
     * @throws Refused where a step cannot be played
     */
    public static PlannedSet coupled(Plan plan, long seed, double kappa) throws Refused {
        List<PlannedScene> scenes = Scenes.of(plan);
        Circuits circuits = new CircuitBuilder(plan, scenes, kappa).build();
        SplittableRandom random = new SplittableRandom(seed);
        Map<IfStrip, NoiseBand> noises = circuits.strips().values().stream()
                .distinct()
                .collect(Collectors.toMap(Function.identity(), PlannedSet::noise));
        new Disorder(random.split()).of(circuits, scenes);
        return new PlannedSet(scenes, circuits, noises, random);
    }

    /** Of a strip in order: how little less comes through one that is not makes no difference. */
    private static NoiseBand noise(IfStrip strip) {
        double ohm = strip.centreHz() < MIXER_HZ ? CONVERTER_NOISE_OHM : MIXER_NOISE_OHM;
        NoiseBand band = new NoiseBand(ohm, strip.centreHz(), strip.centreHz() / strip.widthHz());
        band.follow(hz -> Detection.GAIN * strip.response(hz), 1);
        return band;
    }

    /**
     * Puts adjusters where they belong, as after the work.
     *
     * @param which by name
     * @return this
     */
    public PlannedSet inOrder(Predicate<String> which) {
        circuits.knobs().values().stream().filter(it -> which.test(it.name())).forEach(it -> it.turnTo(0));
        reception.forget();
        return this;
    }

    /**
     * What its steps mean.
     *
     * @return in the order of the plan
     */
    public List<PlannedScene> scenes() {
        return scenes;
    }

    /**
     * The scene of a step.
     *
     * @param step of its plan
     * @return empty for a step of another plan
     */
    public Optional<PlannedScene> scene(PlanStep step) {
        return scenes.stream().filter(each -> each.step().equals(step)).findFirst();
    }

    /**
     * How wide the strip of a scene is, about.
     *
     * @param wanted one of {@link #scenes()}
     * @return Hz
     */
    public double passbandHz(PlannedScene wanted) {
        return circuits.strip(wanted).widthHz();
    }

    /**
     * Over how many turns the greatest reading of a swept dial falls to half the power: where the dial follows the oscillator,
     * its part is as broad as the aerial circuit.
     *
     * @param wanted one of {@link #scenes()} that rocks the gang
     * @return turns
     */
    public double rockedWidthTurns(PlannedScene wanted) {
        double widthTurns = circuits.knob(wanted).widthTurns();
        if (wanted.role() != Role.OSCILLATOR) {
            return widthTurns;
        }
        return widthTurns * wanted.signalHz() / circuits.band(wanted).signalQ() / passbandHz(wanted);
    }

    /**
     * An adjuster.
     *
     * @param name as the plan has it
     * @return empty where the set has none of that name
     */
    public Optional<Knob> knob(String name) {
        return Optional.ofNullable(circuits.knobs().get(name));
    }

    /** All its adjusters, by their names in the order of the plan. */
    Map<String, Knob> knobs() {
        return circuits.knobs();
    }

    /**
     * What the work is held against.
     *
     * @return as the set stands at each call
     */
    public Truth truth() {
        return truth;
    }

    /**
     * Whether the set stands as a step wants it.
     *
     * @param wanted one of {@link #scenes()}
     * @return true after {@link #arrange}
     */
    public boolean isArrangedFor(PlannedScene wanted) {
        return scene.equals(wanted);
    }

    /**
     * Clips generator and meter where a step has them and sets the dial: on its mark for the oscillator, on the signal, wherever
     * that is heard, for an aerial circuit. The generator keeps its output.
     *
     * @param wanted one of {@link #scenes()}
     */
    public void arrange(PlannedScene wanted) {
        scene = wanted;
        clamped = wanted.step()
                .setup()
                .particulars()
                .avc()
                .map(line -> line.heldAtVolts().isPresent())
                .orElse(clamped);
        reception.forget();
        dialHz = truth.dialHz(wanted);
        generator = new Generator(circuits.fedHz(wanted), generator.volts(), wanted.isModulated(), wanted.lead());
    }

    /**
     * Connects generator and meter as for measuring the whole set, its volume full on, with the band on that has a place of the dial.
     *
     * @param newDialHz the place, Hz
     */
    public void connect(double newDialHz) {
        scene = scenes.stream()
                .filter(each -> each.role() == Role.OSCILLATOR || each.role() == Role.SIGNAL)
                .min(Comparator.comparingDouble(each -> Math.abs(Math.log(each.dialHz() / newDialHz))))
                .orElse(scene);
        clamped = false;
        coil.hearEverything();
        coil.turnUp();
        reception.forget();
        dialHz = newDialHz;
    }

    /** Tunes the set to the generator for the greatest response. */
    public void tuneIn() {
        dialHz = truth.tunedDialHz(scene, generator.frequencyHz());
    }

    /** Tunes the generator for the greatest response near where it stands. */
    public void tuneGenerator() {
        generator = generator.withFrequency(truth.topHz(scene, generator.frequencyHz(), dialHz));
    }

    /**
     * Turns the volume until so much is heard.
     *
     * @param volts across the voice coil, V RMS
     */
    public void turnVolumeTo(double volts) {
        coil.turnTo(volts, Detection.audioPeakVolts(peakVolts));
    }

    /**
     * What it gives when all has settled, worked out apart from any reading.
     *
     * @return for the band and the dial where it stands
     */
    public SettledOutput settledOutput() {
        return new SettledOutput(circuits, scene, band(), control, coil.volume());
    }

    /**
     * Puts a resistor across a winding, or takes it off.
     *
     * @param damping which; where no adjuster has the winding's name, its windings stay as they are
     * @param fitted whether it goes on
     */
    public void damp(Damping damping, boolean fitted) {
        circuits.strips().values().stream()
                .distinct()
                .flatMap(IfStrip::windings)
                .filter(winding -> winding.isTurnedBy(damping.winding()))
                .forEach(winding -> winding.damp(fitted ? damping.ohms() : Double.POSITIVE_INFINITY));
        reception.forget();
    }

    /**
     * Fits another detector than that of the demonstration set, whose rest stays.
     *
     * @param detector acts from the next step on
     * @param seed of its noise; any number
     */
    void fit(EnvelopeDetector detector, long seed) {
        rises = new NoisyCarrier(detector::riseVolts, new SplittableRandom(seed));
    }

    /**
     * Fits another gain control than that of the demonstration set.
     *
     * @param newControl acts from the next step on
     */
    void fit(GainControl newControl) {
        control = newControl;
    }

    /** Holds the gain control line, until a step is arranged for that says otherwise. */
    public void clampGainControl() {
        clamped = true;
    }

    /**
     * Switches the set on or off.
     *
     * @param nowOn whether it is on
     */
    public void power(boolean nowOn) {
        on = nowOn;
    }

    /**
     * Turns the generator up for a wanted reading. Where a signal is to be tuned in it stays below four times what the set in
     * order would want, and below what it would want where the gang is rocked: a signal that is not heard is not made up for.
     *
     * @param volts rise over rest at the present terminal; positive
     */
    public void setLevel(double volts) {
        double wanted = Detection.peakVoltsFor(scene, volts) / Detection.GAIN / Math.sqrt(2);
        double most = switch (scene.role()) {
            case OSCILLATOR, SIGNAL -> (scene.step().rock() ? 1 : LOUD) * wanted / Circuits.AERIAL_GAIN;
            case IF_WINDING, DISCRIMINATOR, TRAP, CRYSTAL, CRYSTAL_LOAD, SECOND_OSCILLATOR, BEAT_OSCILLATOR ->
                MOST_VOLTS;
        };
        feed(wanted, most);
    }

    /**
     * Turns the generator up until the reading is as wanted, or it gives no more: the signal is heard, far off as it may be.
     *
     * @param volts rise over rest at the present terminal; positive
     */
    public void makeHeard(double volts) {
        feed(Detection.peakVoltsFor(scene, volts) / Detection.GAIN / Math.sqrt(2), MOST_VOLTS);
    }

    private void feed(double wantedVolts, double mostVolts) {
        double now = circuits.response(scene, generator.frequencyHz(), dialHz);
        generator = generator.withVolts(Math.min(Math.min(MOST_VOLTS, mostVolts), wantedVolts / now));
    }

    @Override
    public void step(long tNanos) {
        seconds = stepped ? Math.max(0, tNanos - lastNanos) / 1e9 : 0;
        stepped = true;
        lastNanos = tNanos;
        if (scene.role() == Role.CRYSTAL) {
            generator = generator.withFrequency(circuits.fedHz(scene));
        }
        reception.follow(scene, generator.frequencyHz(), dialHz);
        double gain = isFm() || clamped ? 1 : control.gain(controlVolts);
        double carrier = Detection.peakVolts(generator.volts() * reception.gain(), gain);
        NoiseBand band = band();
        NoisyCarrier shown = scene.point() == MeterPoint.LIMITER_GRID ? grids : rises;
        double rise = shown.volts(carrier, band.outputVolts() * gain, band.bandwidthHz(), seconds);
        peakVolts = isFm() ? peaks.volts(carrier, band.outputVolts() * gain, band.bandwidthHz(), seconds) : carrier;
        controlVolts += (control.targetVolts(rise) - controlVolts) * share(seconds);
        Discriminator.Halves halves = reception.halves(carrier, band.outputVolts() * gain);
        pointVolts = on ? Detection.directVolts(scene.point(), rise, peakVolts, halves, limits) : 0;
        slowVolts += (pointVolts - slowVolts) * share(seconds);
    }

    private NoiseBand band() {
        return Objects.requireNonNull(noises.get(circuits.strip(scene)));
    }

    private double share(double seconds) {
        return -Math.expm1(-seconds / control.timeConstantSeconds());
    }

    private boolean isFm() {
        return circuits.strip(scene).detector().isPresent();
    }

    @Override
    public double directVolts() {
        return scene.point() == MeterPoint.AVC ? slowVolts : pointVolts;
    }

    @Override
    public double voiceCoilVolts() {
        return on ? coil.volts(audioPeakVolts(), rises.noiseVolts(), band().bandwidthHz(), seconds) : 0;
    }

    @Override
    public boolean clips() {
        return coil.clips(audioPeakVolts());
    }

    private double audioPeakVolts() {
        if (scene.role() == Role.BEAT_OSCILLATOR) {
            return Detection.notePeakVolts(peakVolts, circuits.beatHz(scene, generator.frequencyHz()));
        }
        return generator.modulated() ? Detection.audioPeakVolts(peakVolts) : 0;
    }

    @Override
    public double humVolts() {
        return 0;
    }

    @Override
    public Generator generator() {
        return generator;
    }

    @Override
    public void feed(Generator newGenerator) {
        generator = newGenerator;
    }

    @Override
    public double dialHz() {
        return dialHz;
    }

    @Override
    public void tune(double newDialHz) {
        dialHz = newDialHz;
    }

    /** Its points are taken as fed from a source that no meter loads. */
    @Override
    public void load(double ohm) {}
}

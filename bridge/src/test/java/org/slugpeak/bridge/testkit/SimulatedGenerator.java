package org.slugpeak.bridge.testkit;

import java.util.Optional;
import java.util.SplittableRandom;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.generator.GeneratorSetting;
import org.slugpeak.core.generator.LevelUnit;
import org.slugpeak.core.generator.Modulation;

/**
 * An invented signal generator: what it was told, what it says of itself, and what really stands at its terminals, which its
 * attenuator makes a little different. Any thread may use it.
 */
public final class SimulatedGenerator {

    private static final String NAME = "EMBER FELL INSTRUMENTS,SG-30,0,2.1";
    private static final double LOWEST_HZ = 100;
    private static final double LOWEST_DBM = -140;
    private static final double HIGHEST_HZ = 30e6;
    private static final double HIGHEST_DBM = 13;

    /** The text is that of SCPI-1999 volume 2 section 21.8. */
    private static final String OUT_OF_RANGE = "-222,\"Data out of range\"";

    private final double attenuatorErrorDb;
    private final long seed;
    private double hz = 1000;
    private double dbm = -73;
    private boolean on = true;
    private double depthPercent;
    private boolean modulated;
    private double lieRatio = 1;
    private double lieFromDbm = dbm;
    private double stepHz = 10;

    /**
     * A generator as somebody left it: 1 kHz, -73 dBm, on.
     *
     * @param attenuatorErrorDb most by which each setting of its attenuator is wrong, dB
     * @param seed of these errors; any number
     */
    public SimulatedGenerator(double attenuatorErrorDb, long seed) {
        this.attenuatorErrorDb = attenuatorErrorDb;
        this.seed = seed;
    }

    /**
     * From now on its signal changes by another number of decibels than it says.
     *
     * @param ratio decibels of the signal over decibels that it says; 1 is the truth
     */
    public synchronized void lie(double ratio) {
        lieFromDbm = dbm;
        lieRatio = ratio;
    }

    /**
     * What really stands at its terminals.
     *
     * @return the setting
     */
    public synchronized GeneratorSetting radiates() {
        double signalDbm = lieFromDbm + lieRatio * (dbm - lieFromDbm) + errorDb(dbm);
        Modulation modulation = modulated ? new Modulation(400, depthPercent) : Modulation.NONE;
        return new GeneratorSetting(hz, LevelUnit.DBM.toEmfVolts(signalDbm), modulation, on);
    }

    /**
     * What stands at its terminals where it says so much; for one that does not lie.
     *
     * @param saidEmfVolts what it says, volts EMF
     * @return volts EMF
     */
    public double reallyAt(double saidEmfVolts) {
        double said = LevelUnit.DBM.ofEmfVolts(saidEmfVolts);
        return LevelUnit.DBM.toEmfVolts(said + errorDb(said));
    }

    /** The same setting is always wrong by the same. */
    private double errorDb(double said) {
        long step = Math.round(10 * said);
        return attenuatorErrorDb * (2 * new SplittableRandom(seed * 7919 + step).nextDouble() - 1);
    }

    /**
     * What it says of itself.
     *
     * @return volts EMF
     */
    public synchronized double saidEmfVolts() {
        return 2 * Math.sqrt(1e-3 * 50) * Decibels.ratio(dbm);
    }

    /**
     * Sets it without a line between.
     *
     * @param wanted how it is to stand
     * @return what it says that it stands at
     */
    public synchronized GeneratorSetting obey(GeneratorSetting wanted) {
        tune(String.valueOf(wanted.frequencyHz()));
        level(String.valueOf(LevelUnit.DBM.ofEmfVolts(wanted.emfVolts())));
        on = wanted.on();
        modulated = wanted.modulation().isOn();
        depthPercent = wanted.modulation().depthPercent();
        return new GeneratorSetting(hz, saidEmfVolts(), wanted.modulation(), on);
    }

    /** Its power fails and comes back: it stands as when it left the works, off. */
    public synchronized void powerFails() {
        hz = 1000;
        dbm = -140;
        on = false;
    }

    /**
     * Its front end, which understands SCPI.
     *
     * @return rounds the frequency to 10 Hz and the level to 0.1 dB; refuses more than 30 MHz and 13 dBm, and tells its limits
     */
    public ScpiMeter scpi() {
        return ScpiMeter.identifiedAs(NAME)
                .obeying("*CLS", any -> Optional.empty())
                .obeying("SOURce:FREQuency", this::tune)
                .answeringWith("SOURce:FREQuency?", this::frequency)
                .obeying("SOURce:POWer", this::level)
                .answeringWith("SOURce:POWer?", this::levelText)
                .obeying("OUTPut", this::output)
                .answering("OUTPut?", () -> radiates().on() ? "1" : "0")
                .obeying("SOURce:AM:DEPTh", this::depth)
                .obeying("SOURce:AM:INTernal:FREQuency", any -> Optional.empty())
                .obeying("SOURce:AM:STATe", this::modulate);
    }

    private synchronized Optional<String> tune(String argument) {
        double wanted = Double.parseDouble(argument);
        if (wanted > HIGHEST_HZ) {
            return Optional.of(OUT_OF_RANGE);
        }
        hz = Math.round(wanted / stepHz) * stepHz;
        return Optional.empty();
    }

    private synchronized String frequency(String limit) {
        return String.format(java.util.Locale.ROOT, "%+.6E", limited(limit, LOWEST_HZ, hz, HIGHEST_HZ));
    }

    /** SCPI-1999 volume 1, section 7.2.1: a question may ask for the least and the greatest value. */
    private static double limited(String limit, double lowest, double now, double highest) {
        String asked = limit.toUpperCase(java.util.Locale.ROOT);
        return asked.startsWith("MIN") ? lowest : asked.startsWith("MAX") ? highest : now;
    }

    private synchronized Optional<String> level(String argument) {
        double wanted = Double.parseDouble(argument.replaceAll("(?i)\\s*dbm$", ""));
        if (wanted > HIGHEST_DBM) {
            return Optional.of(OUT_OF_RANGE);
        }
        dbm = Math.round(wanted * 10) / 10.0;
        return Optional.empty();
    }

    private synchronized String levelText(String limit) {
        return String.format(java.util.Locale.ROOT, "%.1f", limited(limit, LOWEST_DBM, dbm, HIGHEST_DBM));
    }

    private synchronized Optional<String> output(String argument) {
        on = argument.equalsIgnoreCase("ON") || argument.equals("1");
        return Optional.empty();
    }

    private synchronized Optional<String> depth(String argument) {
        depthPercent = Double.parseDouble(argument);
        return Optional.empty();
    }

    private synchronized Optional<String> modulate(String argument) {
        modulated = argument.equalsIgnoreCase("ON");
        return Optional.empty();
    }
}

package org.slugpeak.cli.option;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.slugpeak.bridge.file.CsvOptions;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.meter.InstrumentOptions;
import org.slugpeak.bridge.sound.SoundOptions;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.word.Refused;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** How to understand what a source sends. */
public final class SourceOptions {

    private static final double FASTEST_PER_SECOND = 1e6;
    private static final double FASTEST_SIMULATION = 1000;

    @Option(names = "--meter", paramLabel = "NAME|FILE.toml")
    private Optional<String> meter = Optional.empty();

    @Option(names = "--baud", paramLabel = "BITS/S")
    private Optional<Integer> baud = Optional.empty();

    @Option(names = "--ac")
    private boolean ac;

    @Option(names = "--range", paramLabel = "VOLTS")
    private Optional<Double> range = Optional.empty();

    @Option(names = "--decimal-comma")
    private boolean decimalComma;

    @Option(names = "--rate", paramLabel = "READINGS/S")
    private Optional<Double> rate = Optional.empty();

    @Option(names = "--value-column", paramLabel = "NAME|N")
    private Optional<String> valueColumn = Optional.empty();

    @Option(names = "--time-column", paramLabel = "NAME|N|none")
    private Optional<String> timeColumn = Optional.empty();

    @Option(names = "--unit", paramLabel = "UNIT")
    private Optional<String> unit = Optional.empty();

    @Option(names = "--speed", paramLabel = "TIMES")
    private Optional<Double> speed = Optional.empty();

    @Option(names = "--seed", paramLabel = "N")
    private Optional<Integer> seed = Optional.empty();

    @Mixin
    private AudioOptions audio = new AudioOptions();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command = CommandSpec.create();

    private boolean stepped;
    private Optional<Plan> rehearsed = Optional.empty();
    private Set<String> doneBefore = Set.of();
    private Optional<MeterPoint> measuredAt = Optional.empty();

    /** Says that text holds settled values, one for each step of a turn. */
    public void takeSteps(boolean steps) {
        stepped = steps;
    }

    /** Says that a simulated set is made up from this plan, where the address asks for one. */
    public void rehearse(Plan plan) {
        rehearsed = Optional.of(plan);
    }

    /** Says which adjusters of that plan an earlier session has brought to their places. */
    public void doneBefore(Set<String> adjusters) {
        doneBefore = Set.copyOf(adjusters);
    }

    /** The adjusters that an earlier session has brought to their places. */
    public Set<String> doneBefore() {
        return doneBefore;
    }

    /** The plan that is rehearsed. */
    public Optional<Plan> rehearsed() {
        return rehearsed;
    }

    /** Says that a set is measured whole, with the meter at this point: of sound everything counts. */
    public void measureAt(MeterPoint point) {
        audio.hearEverything();
        measuredAt = Optional.of(point);
    }

    /** Where the meter stands while a set is measured whole; empty where it is not. */
    public Optional<MeterPoint> measuredAt() {
        return measuredAt;
    }

    /** What the user typed. */
    public ParseResult given() {
        return command.commandLine().getParseResult();
    }

    /** What was said about text with readings. */
    public CsvOptions csv() {
        double perSecond = rate.orElse(1.0);
        if (!(perSecond > 0 && perSecond <= FASTEST_PER_SECOND)) {
            throw new TypeConversionException(
                    "--rate takes more than 0 and at most 1000000 readings a second, not " + perSecond);
        }
        return new CsvOptions(
                decimalComma,
                rate.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                valueColumn,
                timeColumn,
                unit.map(SourceOptions::knownUnit),
                stepped);
    }

    private static String knownUnit(String unit) {
        try {
            return CsvOptions.knownUnit(unit);
        } catch (Refused e) {
            throw new TypeConversionException("--unit: " + e.reason());
        }
    }

    /** Whether numbers are written with decimal commas. */
    public boolean decimalComma() {
        return decimalComma;
    }

    /** What was said about a serial instrument. */
    public InstrumentOptions serial() {
        if (baud.isPresent() && baud.get() <= 0) {
            throw new TypeConversionException("--baud takes a number above 0, not " + baud.get());
        }
        if (range.isPresent() && !(range.get() > 0 && range.get() < Double.POSITIVE_INFINITY)) {
            throw new TypeConversionException("--range takes a number of volts above 0, not " + range.get());
        }
        MeterSetting setting = new MeterSetting(
                ac ? MeterSetting.Function.AC : MeterSetting.Function.DC,
                range.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                decimalComma);
        return new InstrumentOptions(meter, baud.map(OptionalInt::of).orElse(OptionalInt.empty()), setting);
    }

    /** What an instrument is asked to measure. */
    public Measurand asked() {
        return ac ? Measurand.AC_VOLTS : Measurand.DC_VOLTS;
    }

    /** How many times faster than life a simulated bench runs. */
    public double speed() {
        double times = speed.orElse(1.0);
        if (!(times > 0 && times <= FASTEST_SIMULATION)) {
            throw new TypeConversionException("--speed takes more than 0 and at most 1000, not " + times);
        }
        return times;
    }

    /** Seed of a simulated bench. */
    public int seed() {
        return seed.orElse(1);
    }

    /** What was said about audio. */
    public SoundOptions sound() {
        return audio.options();
    }
}

package org.slugpeak.cli.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.Setup;

/** Puts the steps of a plan into words. All methods are pure. */
final class PlanWords {

    private static final double MEGAHERTZ_FROM_HZ = 3e6;

    private PlanWords() {}

    static String prepare(Preparation it) {
        return it.first() ? it.setup().map(PlanWords::firstSetUp).orElse("") : changes(it);
    }

    /**
     * How things stand at the beginning. The leads are on already, as the safety questions have it, so this is no order to touch
     * them; it says how it is done where one is on the wrong point.
     */
    private static String firstSetUp(Setup setup) {
        String leads = setup.hasLeads() ? Phrase.FIRST_LEADS.of(SafeHands.safe(), leads(setup)) : "";
        return joined(knobs(setup), leads);
    }

    private static String changes(Preparation it) {
        List<String> jobs = new ArrayList<>();
        it.setup().filter(setup -> it.movesLeads()).ifPresent(setup -> jobs.add(leads(setup)));
        it.takesOff().ifPresent(damping -> jobs.add(undamp(damping)));
        it.putsOn().ifPresent(damping -> jobs.add(damp(damping)));
        String atTerminals = jobs.isEmpty() ? "" : SafeHands.at(String.join("; ", jobs));
        return joined(atTerminals, it.setup().map(PlanWords::knobs).orElse(""));
    }

    private static String joined(String first, String second) {
        return Stream.of(first, second).filter(part -> !part.isEmpty()).collect(Collectors.joining("; "));
    }

    /** What a hand that stays out of the chassis sets. */
    private static String knobs(Setup setup) {
        List<String> parts = new ArrayList<>();
        setup.generatorHz().ifPresent(hz -> parts.add(Phrase.GENERATOR.of(frequency(hz))));
        add(parts, Phrase.MODULATION, setup.modulation());
        setup.dialHz().ifPresent(hz -> parts.add(Phrase.DIAL.of(frequency(hz))));
        add(parts, Phrase.DIAL, setup.dial());
        setup.level()
                .ifPresent(level ->
                        parts.add(Phrase.READING_RANGE.of(number(level.low()), number(level.high()), level.unit())));
        return String.join(", ", parts);
    }

    /** What goes to which terminal. */
    private static String leads(Setup setup) {
        List<String> parts = new ArrayList<>();
        boolean highInjection = setup.highTension().atInjection();
        add(parts, highInjection ? Phrase.GENERATOR_TO_HIGH : Phrase.GENERATOR_TO, setup.injection());
        add(parts, Phrase.DUMMY_ANTENNA, setup.dummyAntenna());
        add(parts, setup.highTension().atMeter() ? Phrase.METER_AT_HIGH : Phrase.METER_AT, setup.meterPoint());
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, Phrase phrase, String text) {
        if (!text.isEmpty()) {
            parts.add(phrase.of(text));
        }
    }

    static String turn(PlanStep step) {
        String how = step.rock() ? rocking(step.goal()) : standing(step.goal());
        return step.notes().isEmpty()
                ? Phrase.TURN.of(step.adjuster(), how)
                : Phrase.TURN_NOTES.of(step.adjuster(), how, String.join("; ", step.notes()));
    }

    private static String standing(Goal goal) {
        return switch (goal) {
            case PEAK -> Phrase.TO_MAXIMUM.of();
            case DIP -> Phrase.TO_MINIMUM.of();
            case ZERO -> Phrase.TO_ZERO.of();
            case ON_DIAL -> Phrase.TO_MAXIMUM_ON_MARK.of();
        };
    }

    /** While the gang is rocked the pointer cannot stay where it is: the greatest sweep counts, wherever it is met. */
    private static String rocking(Goal goal) {
        return switch (goal) {
            case ON_DIAL -> Phrase.ROCK_NEAR_MARK.of();
            case PEAK, DIP, ZERO -> Phrase.ROCK.of();
        };
    }

    private static String damp(Damping damping) {
        return (damping.highTension() ? Phrase.DAMP_HIGH : Phrase.DAMP).of(kilohms(damping), damping.winding());
    }

    static String undamp(Damping damping) {
        return (damping.highTension() ? Phrase.UNDAMP_HIGH : Phrase.UNDAMP).of(kilohms(damping), damping.winding());
    }

    private static String kilohms(Damping damping) {
        return number(damping.ohms() / 1e3);
    }

    private static String frequency(double hz) {
        return hz < MEGAHERTZ_FROM_HZ ? number(hz / 1e3) + " kHz" : number(hz / 1e6) + " MHz";
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}

package org.slugpeak.cli.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.scale.ScaleEstimate;

/** Puts the steps of a plan into words. All methods are pure. */
final class PlanWords {

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

    /** What the dial of a generator has to be set to. */
    static String mark(ScaleEstimate mark) {
        return Phrase.GENERATOR_MARK.of(mark.hz() / 1e3, mark.combinedHz() / 1e3);
    }

    /** What a hand that stays out of the chassis sets. */
    private static String knobs(Setup setup) {
        List<String> parts = new ArrayList<>();
        Phrase generator = setup.particulars().generatorMeasured() ? Phrase.GENERATOR_MEASURED : Phrase.GENERATOR;
        setup.generatorHz().ifPresent(hz -> parts.add(generator.of(Frequencies.plain(hz))));
        setup.particulars().generatorMark().ifPresent(mark -> parts.add(mark(mark)));
        add(parts, Phrase.MODULATION, setup.modulation());
        setup.particulars().band().ifPresent(band -> parts.add(Phrase.BAND.of(band.name())));
        setup.dialHz().ifPresent(hz -> parts.add(Phrase.DIAL.of(Frequencies.plain(hz))));
        add(parts, Phrase.DIAL, setup.dial());
        setup.level()
                .ifPresent(level -> parts.add(Phrase.READING_RANGE.of(
                        Frequencies.number(level.low()), Frequencies.number(level.high()), level.unit())));
        return String.join(", ", parts);
    }

    /** What goes to which terminal. */
    private static String leads(Setup setup) {
        List<String> parts = new ArrayList<>();
        boolean highInjection = setup.highTension().atInjection();
        add(parts, highInjection ? Phrase.GENERATOR_TO_HIGH : Phrase.GENERATOR_TO, setup.injection());
        add(parts, Phrase.DUMMY_ANTENNA, setup.dummyAntenna());
        add(parts, setup.highTension().atMeter() ? Phrase.METER_AT_HIGH : Phrase.METER_AT, MeterWords.point(setup));
        setup.particulars().avc().ifPresent(line -> parts.add(MeterWords.avc(line)));
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, Phrase phrase, String text) {
        if (!text.isEmpty()) {
            parts.add(phrase.of(text));
        }
    }

    private static String damp(Damping damping) {
        return (damping.highTension() ? Phrase.DAMP_HIGH : Phrase.DAMP).of(kilohms(damping), damping.winding());
    }

    static String undamp(Damping damping) {
        return (damping.highTension() ? Phrase.UNDAMP_HIGH : Phrase.UNDAMP).of(kilohms(damping), damping.winding());
    }

    private static String kilohms(Damping damping) {
        return Frequencies.number(damping.ohms() / 1e3);
    }
}

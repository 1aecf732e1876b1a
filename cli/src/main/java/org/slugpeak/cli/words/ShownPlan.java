package org.slugpeak.cli.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.SafetyAnswers;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.plan.TuningElement;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.receiver.OscillatorSide;

/** What a plan on paper says beside the sentences of the session. All methods are pure; any thread may call them. */
public final class ShownPlan {

    private ShownPlan() {}

    /**
     * What stands above the stages: the set, what is dangerous about it, the plan's own words.
     *
     * @param plan that is shown
     * @return one line for each thing
     */
    public static List<String> head(Plan plan) {
        List<String> lines = new ArrayList<>(List.of(plan.name(), chassis(plan.chassis())));
        plan.intermediates().forEach(each -> lines.add(intermediate(each)));
        plan.bands().forEach(each -> lines.add(band(each)));
        if (!plan.valves().isEmpty()) {
            lines.add(Phrase.SHOWN_VALVES.of(String.join(", ", plan.valves())));
        }
        plan.notes().forEach(note -> lines.add(Phrase.SHOWN_NOTE.of(note)));
        lines.add(Phrase.SHOWN_OUTRANKED.of());
        SafetyAnswers nothingDone = new SafetyAnswers(plan.chassis(), false, true, false);
        SafetyWords.dangers(nothingDone).forEach(danger -> lines.add(Phrase.SHOWN_DANGER.of(danger)));
        lines.add(SafeHands.turning());
        return List.copyOf(lines);
    }

    private static String chassis(Chassis chassis) {
        return switch (chassis) {
            case TRANSFORMER -> Phrase.SHOWN_CHASSIS_TRANSFORMER.of();
            case LIVE -> Phrase.SHOWN_CHASSIS_LIVE.of();
            case UNKNOWN -> Phrase.SHOWN_CHASSIS_UNKNOWN.of();
        };
    }

    private static String intermediate(IntermediateFrequency it) {
        String hz = Frequencies.plain(it.hz());
        return it.name().isEmpty() ? Phrase.SHOWN_INTERMEDIATE.of(hz) : Phrase.SHOWN_INTERMEDIATES.of(it.name(), hz);
    }

    private static String band(Band band) {
        String ends =
                Phrase.SHOWN_BAND.of(band.name(), Frequencies.plain(band.lowHz()), Frequencies.plain(band.highHz()));
        String side = band.oscillator().map(it -> oscillator(it).of(ends)).orElse(ends);
        return band.tuning() == TuningElement.PERMEABILITY ? Phrase.SHOWN_SLUGS.of(side) : side;
    }

    private static Phrase oscillator(OscillatorSide side) {
        return switch (side) {
            case ABOVE -> Phrase.SHOWN_OSCILLATOR_ABOVE;
            case BELOW -> Phrase.SHOWN_OSCILLATOR_BELOW;
        };
    }

    /**
     * The heading of a stage.
     *
     * @param number from 1
     * @param stage which
     * @return with its adjusters, its rounds, and how many settings that makes
     */
    public static String stage(int number, Stage stage) {
        RepeatRule repeat = stage.repeat();
        String rounds = repeat.isOnce()
                ? Phrase.SHOWN_ONCE.of()
                : Phrase.SHOWN_ROUNDS.of(repeat.mostRounds(), Frequencies.number(repeat.belowDb()));
        int steps = stage.steps().size();
        return Phrase.SHOWN_STAGE.of(
                number, stage.name(), adjusters(steps), rounds, settings(steps, steps * repeat.mostRounds()));
    }

    private static String adjusters(int count) {
        return count == 1 ? Phrase.SHOWN_ADJUSTER.of() : Phrase.SHOWN_ADJUSTERS.of(count);
    }

    private static String settings(int least, int most) {
        if (least < most) {
            return Phrase.SHOWN_SETTINGS_BETWEEN.of(least, most);
        }
        return most == 1 ? Phrase.SHOWN_SETTING.of() : Phrase.SHOWN_SETTINGS.of(most);
    }

    /**
     * An adjuster.
     *
     * @param stage number of its stage, from 1
     * @param step its number there, from 1
     * @param turn what the session says of it
     * @return a line
     */
    public static String step(int stage, int step, String turn) {
        return Phrase.SHOWN_STEP.of(stage, step, turn);
    }

    /**
     * What is done before an adjuster.
     *
     * @param said what the session says of it
     * @return a line
     */
    public static String setUp(String said) {
        return Phrase.SHOWN_SET_UP.of(said);
    }

    /**
     * A move of a check.
     *
     * @param said what the session says of it
     * @return a line
     */
    public static String check(String said) {
        return Phrase.SHOWN_CHECK.of(said);
    }

    /**
     * How the whole response of each stage is looked at when the plan is through.
     *
     * @param plan that is carried out or shown
     * @return a line for each stage of which the plan says how wide it is
     */
    public static List<String> curves(Plan plan) {
        return plan.stages().stream().flatMap(stage -> curve(stage).stream()).toList();
    }

    private static Optional<String> curve(Stage stage) {
        OptionalDouble span = stage.response().spanHz();
        OptionalDouble middle = stage.steps().get(0).setup().generatorHz();
        if (span.isEmpty() || middle.isEmpty()) {
            return Optional.empty();
        }
        double half = span.getAsDouble() / 2;
        return Optional.of(Phrase.SHOWN_CURVE.of(
                stage.name(),
                Frequencies.number((middle.getAsDouble() - half) / 1e3),
                Frequencies.number((middle.getAsDouble() + half) / 1e3)));
    }

    /**
     * Which stages a meter cannot read, because it measures the other kind of volts.
     *
     * @param plan that is carried out
     * @param measured what the meter is asked to measure
     * @return a line that names them and says what to do; empty where there are none
     */
    public static Optional<String> unreadable(Plan plan, Measurand measured) {
        String stages = plan.stages().stream()
                .filter(stage -> stage.steps().stream()
                        .anyMatch(step -> isOther(step.setup().particulars().point(), measured)))
                .map(Stage::name)
                .collect(Collectors.joining(", "));
        Phrase phrase = measured.equals(Measurand.AC_VOLTS) ? Phrase.UNREADABLE_DC : Phrase.UNREADABLE_AC;
        return stages.isEmpty() ? Optional.empty() : Optional.of(phrase.of(stages));
    }

    private static boolean isOther(Optional<MeterPoint> point, Measurand measured) {
        return point.isPresent() && !point.get().measurand().equals(measured);
    }

    /**
     * What stands below the stages.
     *
     * @param plan that is shown
     * @param over what the session says when it is through
     * @return one line for each thing
     */
    public static List<String> foot(Plan plan, String over) {
        int most = plan.stages().stream()
                .mapToInt(stage -> stage.steps().size() * stage.repeat().mostRounds())
                .sum();
        int steps = plan.steps();
        List<String> lines = new ArrayList<>(List.of(over));
        lines.addAll(curves(plan));
        lines.add(Phrase.SHOWN_TOTAL.of(adjusters(steps), settings(steps, most)));
        return List.copyOf(lines);
    }
}

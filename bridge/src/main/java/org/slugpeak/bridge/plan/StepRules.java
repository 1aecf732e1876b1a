package org.slugpeak.bridge.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Particulars;
import org.slugpeak.core.plan.PlanStep;

/** What no step can mean, each with its line and what to write instead. All methods are pure. */
final class StepRules {

    private StepRules() {}

    static void check(PlanStep step, Section where) {
        dial(step, where);
        generator(step, where);
        rock(step, where);
        meter(step, where);
        image(step, where);
    }

    private static void dial(PlanStep step, Section where) {
        OptionalDouble dialHz = step.setup().dialHz();
        step.setup().particulars().band().ifPresent(band -> {
            if (dialHz.isPresent() && !band.covers(dialHz.getAsDouble())) {
                where.problem(
                        where.has("dial-kHz") ? "dial-kHz" : "band",
                        "the dial stands at " + kHz(dialHz.getAsDouble()) + ", outside " + range(band)
                                + ": change one of them");
            }
        });
    }

    private static void generator(PlanStep step, Section where) {
        boolean known = step.setup().generatorHz().isPresent();
        if (step.setup().particulars().generatorMeasured() && !known) {
            where.problem("generator-measured", "'generator-measured' needs 'generator-kHz', to say near what");
        }
        if (step.goal().movesGenerator() && !known) {
            where.problem("seek", "seek = \"crystal\" needs 'generator-kHz', to say near what the crystal is sought");
        }
    }

    /** What is found by the generator or by ear has no sweeps of a gang. */
    private static void rock(PlanStep step, Section where) {
        if (step.rock() && (step.goal().movesGenerator() || step.goal().isHeard())) {
            where.problem(
                    "rock", "nothing is rocked where seek is \"" + step.goal().code() + "\": leave 'rock' away");
        }
    }

    private static void meter(PlanStep step, Section where) {
        Particulars said = step.setup().particulars();
        boolean held = said.avc().filter(line -> line.heldAtVolts().isPresent()).isPresent();
        if (held && said.point().filter(MeterPoint.AVC::equals).isPresent()) {
            where.problem("avc-clamp-V", "the meter reads the AVC line, which 'avc-clamp-V' holds: read elsewhere");
        }
        boolean elsewhere =
                said.point().filter(point -> point != MeterPoint.VOICE_COIL).isPresent();
        if (step.goal().isHeard() && elsewhere) {
            where.problem(
                    "seek",
                    "a zero beat is read as sound: seek = \"zero-beat\" needs meter-point = \"voice-coil\", not \""
                            + said.point().orElseThrow().code() + "\"");
        }
    }

    private static void image(PlanStep step, Section where) {
        if (!step.provesImage()) {
            return;
        }
        if (!step.goal().hasImage()) {
            where.problem(
                    "prove-image",
                    "'prove-image' proves a maximum: seek \"on-dial\" or \"peak\", not \""
                            + step.goal().code() + "\"");
        } else if (step.oscillator().isEmpty()
                || step.setup().particulars().intermediate().isEmpty()
                || step.setup().generatorHz().isEmpty()) {
            where.problem(
                    "prove-image",
                    "'prove-image' needs 'generator-kHz', a 'band' that says oscillator = \"above\" or \"below\","
                            + " and 'if' where the plan has several");
        } else {
            imageOnDial(step, where, step.setup().particulars().band().orElseThrow());
        }
    }

    /** An image that is off the scale can be looked for nowhere; a proof that cannot be made proves nothing. */
    private static void imageOnDial(PlanStep step, Section where, Band band) {
        OptionalDouble imageHz = step.imageDialHz();
        if (imageHz.isEmpty() || !band.covers(imageHz.getAsDouble())) {
            where.problem(
                    "prove-image",
                    "the image would be met at "
                            + (imageHz.isPresent() ? kHz(imageHz.getAsDouble()) : "no frequency above zero")
                            + ", outside " + range(band) + ": it cannot be proved here, so leave 'prove-image' away,"
                            + " or prove it at another dial point");
        }
    }

    private static String range(Band band) {
        return String.format(
                Locale.ROOT,
                "band %s, %s to %s",
                band.name(),
                WrittenNumber.of(band.lowHz() / 1e3),
                kHz(band.highHz()));
    }

    private static String kHz(double hz) {
        return WrittenNumber.of(hz / 1e3) + " kHz";
    }
}

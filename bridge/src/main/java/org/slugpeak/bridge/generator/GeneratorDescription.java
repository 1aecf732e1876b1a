package org.slugpeak.bridge.generator;

import java.util.Optional;
import org.slugpeak.bridge.instrument.LinkSettings;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.LevelUnit;

/**
 * One generator as it is described in a TOML file. Immutable; any thread may use it.
 *
 * @param name what the user writes after {@code --generator-kind}
 * @param title one line that says what it is
 * @param hint what to do where it does not answer; may be empty
 * @param link how its port is set
 * @param talk how it talks
 * @param frequency how its frequency is set
 * @param hertz how many hertz one of the frequency's unit is
 * @param level how its level is set; empty where only a hand can
 * @param levelUnit what the level counts in
 * @param output how its output is switched; empty where only a hand can
 * @param modulation how it is modulated, with <code>{tone}</code> in Hz and <code>{depth}</code> in percent; empty where only a hand can
 * @param settlingNanos from the answer until the signal stands
 */
record GeneratorDescription(
        String name,
        String title,
        String hint,
        LinkSettings link,
        TalkForm talk,
        NumberLines frequency,
        double hertz,
        Optional<NumberLines> level,
        LevelUnit levelUnit,
        Optional<SwitchLines> output,
        Optional<SwitchLines> modulation,
        long settlingNanos) {

    GeneratorDescription within(NumberLines frequencyLines, Optional<NumberLines> levelLines) {
        return new GeneratorDescription(
                name,
                title,
                hint,
                link,
                talk,
                frequencyLines,
                hertz,
                levelLines,
                levelUnit,
                output,
                modulation,
                settlingNanos);
    }

    GeneratorReach reach() {
        double lowest = level.map(NumberLines::lowest).orElse(Double.NEGATIVE_INFINITY);
        double highest = level.map(NumberLines::highest).orElse(Double.POSITIVE_INFINITY);
        return new GeneratorReach(
                level.isPresent(),
                output.isPresent(),
                modulation.isPresent(),
                hertz * frequency.lowest(),
                hertz * frequency.highest(),
                Double.isInfinite(lowest) ? 0 : levelUnit.toEmfVolts(lowest),
                Double.isInfinite(highest) ? highest : levelUnit.toEmfVolts(highest),
                levelUnit,
                settlingNanos);
    }

    String frequencyUnit() {
        return hertz == 1 ? "Hz" : hertz == 1e3 ? "kHz" : "MHz";
    }
}

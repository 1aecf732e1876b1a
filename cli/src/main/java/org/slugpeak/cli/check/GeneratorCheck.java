package org.slugpeak.cli.check;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.bridge.generator.DescribedGenerator;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.words.Frequencies;
import org.slugpeak.cli.words.GeneratorPhrase;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.GeneratorSetting;
import org.slugpeak.core.generator.LevelUnit;
import org.slugpeak.core.generator.Modulation;

/** Tells what a generator is and whether it obeys: it is set to what it stands at, with its output off. One thread at a time. */
public final class GeneratorCheck {

    /** For what a generator cannot tell of itself: an IF, and little signal. */
    private static final GeneratorSetting UNTOLD = new GeneratorSetting(455e3, 100e-6, Modulation.NONE, false);

    private GeneratorCheck() {}

    /**
     * Looks at one.
     *
     * @param generator open; it is left with its output off
     * @param kind which description says what it understands
     * @return lines for the user
     * @throws BridgeException where it does not answer or refuses
     */
    public static List<String> look(DescribedGenerator generator, String kind) throws BridgeException {
        List<String> lines = new ArrayList<>();
        GeneratorReach reach = generator.reach();
        GeneratorSetting stood = generator.asItStands(UNTOLD);
        lines.add(GeneratorPhrase.IS.of(generator.name(), kind));
        lines.add(GeneratorPhrase.STOOD.of(
                Frequencies.kHz(stood.frequencyHz()),
                reach.setsLevel() ? level(stood.emfVolts()) : GeneratorPhrase.NO_LEVEL.of(),
                stood.on() ? GeneratorPhrase.ON.of() : GeneratorPhrase.OFF.of()));
        GeneratorSetting obeyed = generator.set(stood.switched(false));
        lines.add(GeneratorPhrase.OBEYS.of(Frequencies.kHz(obeyed.frequencyHz())));
        lines.add(GeneratorPhrase.OBEYS_LEVEL.of(obeys(reach.setsLevel())));
        lines.add(GeneratorPhrase.OBEYS_OUTPUT.of(obeys(reach.switchesOutput())));
        lines.add(GeneratorPhrase.OBEYS_MODULATION.of(obeys(reach.modulates())));
        return List.copyOf(lines);
    }

    private static String obeys(boolean fromHere) {
        return (fromHere ? GeneratorPhrase.FROM_HERE : GeneratorPhrase.BY_HAND).of();
    }

    private static String level(double emfVolts) {
        return GeneratorPhrase.LEVEL.of(
                LevelUnit.DBM.ofEmfVolts(emfVolts),
                LevelUnit.MICROVOLTS_EMF.ofEmfVolts(emfVolts),
                LevelUnit.MICROVOLTS_AT_50_OHM.ofEmfVolts(emfVolts));
    }
}

package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written down in one place of the house, and nowhere else. */
final class OnePlaceTest {

    private static final Pattern COMPARED = Pattern.compile(
            "[=!]= *((Seek|Goal)\\.)?(PEAK|DIP|ZERO|ON_DIAL)\\b|\\b(PEAK|DIP|ZERO|ON_DIAL)(\\.equals\\(| *[=!]=)"
                    + "|equals\\((Seek|Goal)\\.");

    private static final Pattern DECIBELS =
            Pattern.compile("[12]0 *\\* *Math\\.log10\\(|Math\\.pow\\(10, [^;]* / [12]0\\)");

    /** What javax.sound says to a format that a line does not offer; the next format is tried. */
    private static final List<String> LIBRARIES = List.of("sound/JavaSound.java", "cue/LineSpeaker.java");

    private static final Pattern CAUGHT = Pattern.compile("catch \\([^)]*\\bIllegalArgumentException\\b");

    /** Another thing to turn for, and another goal of a plan, must be asked for by the compiler: a comparison would go on in silence. */
    @Test
    void nobodyComparesWhatIsSoughtWithAConstant() {
        assertEquals(List.of(), Sources.met(Sources.all(), COMPARED));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "seek == Seek.DIP",
                "if (ZERO != wanted)",
                "wanted.equals(Seek.PEAK)",
                "it.seek() != ZERO",
                "goal == Goal.ON_DIAL",
                "step.goal() != Goal.ZERO",
                "ON_DIAL.equals(goal)",
                "goal.equals(Goal.DIP)"
            })
    void aComparisonWithWhatIsSoughtWouldBeSeen(String line) {
        assertTrue(COMPARED.matcher(line).find());
    }

    @Test
    void oneClassKnowsWhatADecibelIs() {
        List<Path> others = Sources.all().stream()
                .filter(file -> !file.endsWith("core/decibel/Decibels.java"))
                .toList();
        assertEquals(List.of(), Sources.met(others, DECIBELS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"20 * Math.log10(x)", "10*Math.log10(x)", "Math.pow(10, -db / 20)"})
    void aDecibelWrittenOutWouldBeSeen(String line) {
        assertTrue(DECIBELS.matcher(line).find());
    }

    /** A fault of the caller stays one: what a person or a file got wrong is a checked Refused or a BridgeException. */
    @Test
    void nobodyTakesAFaultOfTheCallerForOneOfTheUser() {
        List<Path> others = Sources.all().stream()
                .filter(file -> LIBRARIES.stream().noneMatch(file::endsWith))
                .toList();
        assertEquals(List.of(), Sources.met(others, CAUGHT));
    }

    @Test
    void aCallersFaultThatIsCaughtWouldBeSeen() {
        assertTrue(CAUGHT.matcher("} catch (IllegalArgumentException e) {").find());
        assertTrue(CAUGHT.matcher("} catch (Refused | IllegalArgumentException e) {")
                .find());
    }
}

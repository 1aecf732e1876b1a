package org.slugpeak.cli.align;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.cli.words.ShownPlan;
import org.slugpeak.cli.words.SpokenPlan;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.reading.Measurand;

/** A plan on paper is what the session says, all of it, in rows of 80 columns. */
class PlanSheetTest {

    private static final List<String> SHIPPED = PlanFiles.SHIPPED;

    private static Plan shipped(String name) throws BadConfiguration {
        boolean asks = name.equals("am-superhet");
        return PlanFiles.load(name, asks ? OptionalDouble.of(455e3) : OptionalDouble.empty());
    }

    private static String words(List<String> rows) {
        return String.join(" ", rows).replaceAll("\\s+", " ");
    }

    static List<String> names() {
        return SHIPPED;
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    private static Plan random(RandomPlans plans, Path folder) throws IOException, BadConfiguration {
        Path file = Files.writeString(folder.resolve("random.toml"), plans.text());
        return PlanFiles.load(file.toString(), OptionalDouble.empty());
    }

    private static List<String> rows(Plan plan, boolean withRest) {
        AlignmentProgress progress = new AlignmentProgress(plan);
        if (withRest) {
            progress.withRest();
        }
        return PlanSheet.rows(plan, progress);
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyPlanThatComesAlongIsShownAsItAlwaysWas(String name) throws Exception {
        try (var in = PlanSheetTest.class.getResourceAsStream(name + ".txt")) {
            String golden = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertEquals(golden.strip(), String.join("\n", rows(shipped(name), true)));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whateverThePlanNoRowIsWiderThanEightyColumns(long seed, @TempDir Path folder) throws Exception {
        for (String row : rows(random(new RandomPlans(seed), folder), true)) {
            assertTrue(row.length() <= 80, row);
            assertEquals(row.stripTrailing(), row);
        }
    }

    /** Cut words may stand anywhere else, so adjusters are compared without blanks. */
    @ParameterizedTest
    @MethodSource("seeds")
    void everyAdjusterStandsThereOnceAndInItsOrder(long seed, @TempDir Path folder) throws Exception {
        RandomPlans plans = new RandomPlans(seed);
        String shown = words(rows(random(plans, folder), true));
        int from = 0;
        for (String adjuster : plans.adjusters()) {
            int at = shown.indexOf(" " + adjuster + ": ", from);
            assertTrue(at >= from, adjuster + " in " + shown);
            assertFalse(shown.indexOf(" " + adjuster + ": ", at + 1) > 0, adjuster);
            from = at;
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whereHighTensionMayStandItIsSaid(long seed, @TempDir Path folder) throws Exception {
        RandomPlans plans = new RandomPlans(seed);
        Plan plan = random(plans, folder);
        String shown = words(rows(plan, true));
        assertEquals(plans.hasHighTension(), shown.contains("(may be HT"), shown);
        assertTrue(shown.contains("set OFF, unplug, discharge, measure under 30 V"));
    }

    /** The session itself, every adjuster of which stands at its best: what it asks for is on the paper, word for word. */
    @ParameterizedTest
    @MethodSource("seeds")
    void nothingThatTheSessionAsksForIsMissing(long seed, @TempDir Path folder) throws Exception {
        Plan plan = random(new RandomPlans(seed), folder);
        String shown = words(rows(plan, false)).replace(" ", "");
        for (String said : new SpokenPlan(plan, 0).asked()) {
            assertTrue(shown.contains(said.replaceAll("\\s+", "")), said + "\n" + shown);
        }
    }

    @Test
    void theRestingReadingIsAskedForUnlessNobodyWantsIt() throws Exception {
        Plan plan = shipped("tarnfield-54a");
        assertTrue(words(rows(plan, true)).contains("turn the generator's output off, its mains left on"));
        assertFalse(words(rows(plan, false)).contains("turn the generator's output off, its mains left on"));
    }

    @Test
    void stagesThatTheMeterCannotReadAreNamed() throws Exception {
        Plan both = shipped("brackenmere-cr2");
        assertTrue(ShownPlan.unreadable(both, Measurand.DC_VOLTS).orElseThrow().contains("read AC: BFO;"));
        assertTrue(
                ShownPlan.unreadable(both, Measurand.AC_VOLTS).orElseThrow().contains("read DC: Crystal, Second IF,"));
        assertEquals(Optional.empty(), ShownPlan.unreadable(shipped("larkmoor-6c"), Measurand.AC_VOLTS));
        assertEquals(Optional.empty(), ShownPlan.unreadable(shipped("tarnfield-54a"), Measurand.DC_VOLTS));
    }

    @Test
    void settingsAreCountedFromOneRoundOfEachStageToAllThatAreAllowed() throws Exception {
        List<String> rows = rows(shipped("tarnfield-54a"), true);
        // 4 + 1 + 2 + 1 + 2 adjusters; of them 4 and 2 up to six times, the others once
        assertEquals("In all 10 adjusters, 10 to 40 settings.", rows.get(rows.size() - 1));
    }
}

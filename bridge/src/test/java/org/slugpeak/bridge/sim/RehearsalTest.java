package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.RoundVerdict;
import org.slugpeak.core.receiver.Tarnfield;
import org.slugpeak.core.rehearsal.PlannedSet;
import org.slugpeak.core.rehearsal.Role;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;
import org.slugpeak.core.word.Refused;

/**
 * Plans that are carried out at the set that is made up from them, with nobody at a key. {@link RehearsalTable} has more seeds and
 * more plans.
 */
class RehearsalTest {

    private static final int SEEDS = 4;
    private static final int RANDOM_PLANS = 24;

    private static Plan plan(String name) throws BridgeException {
        return PlanFiles.load(name, name.equals("am-superhet") ? OptionalDouble.of(455e3) : OptionalDouble.empty());
    }

    private static Plan stage(String plan, String stage) throws BridgeException {
        Plan whole = plan(plan);
        return whole.withStages(whole.stages().stream()
                .filter(each -> each.name().equals(stage))
                .toList());
    }

    static List<String> shipped() {
        return PlanFiles.SHIPPED;
    }

    private static boolean isMet(Rehearsal rehearsal) {
        return rehearsal.isFinished() && rehearsal.notMet().isEmpty();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyPlanThatComesAlongIsMetInEveryStepOrSaysWhichAdjusterWasNotFound(String name)
            throws BridgeException, Refused {
        int met = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            Rehearsal rehearsal = Rehearsal.of(plan(name), seed);
            assertTrue(rehearsal.isFinished() || rehearsal.lastWord().contains("did not find"), rehearsal.lastWord());
            met += isMet(rehearsal) ? 1 : 0;
        }
        assertTrue(met >= SEEDS - 1, met + " of " + SEEDS);
    }

    /** How 200 of them end: {@code docs/plans.md}. */
    @Test
    void randomPlansAreMetInEveryStepOrSayWhichOneWasNot(TestReporter reporter) throws BridgeException, Refused {
        List<String> unmet = new ArrayList<>();
        for (int seed = 1; seed <= RANDOM_PLANS; seed++) {
            Rehearsal rehearsal = Rehearsal.of(RandomPlans.of(seed), seed);
            assertTrue(rehearsal.isFinished() || rehearsal.lastWord().contains("did not find"), rehearsal.lastWord());
            if (!isMet(rehearsal)) {
                unmet.add(rehearsal.name() + ": " + rehearsal.lastWord() + rehearsal.notMet());
            }
        }
        reporter.publishEntry("not met", unmet.toString());
        assertTrue(unmet.size() <= 1, unmet.toString());
    }

    @Test
    void theIfJobOfTheDemonstrationSetEndsWithinATenthOfADecibelOfEachOptimum() throws BridgeException, Refused {
        int good = 0;
        for (int seed = 0; seed < 100; seed++) {
            Rehearsal rehearsal = Rehearsal.of(stage("tarnfield-54a", "AM IF"), seed);
            assertTrue(rehearsal.isFinished(), rehearsal.lastWord());
            good += rehearsal.last().stream().allMatch(it -> it.missingDb() < 0.1) ? 1 : 0;
        }
        assertTrue(good >= 95, good + " of 100");
    }

    @Test
    void aZeroIsMetWithinTwoKilohertzAndHasNoDecibels() throws BridgeException, Refused {
        int met = 0;
        for (int seed = 200; seed < 212; seed++) {
            Rehearsal rehearsal = Rehearsal.of(stage("quillmere-fm-8", "FM IF"), seed);
            for (Rehearsal.Outcome it : rehearsal.last()) {
                if (it.scene().role() == Role.DISCRIMINATOR && it.ended().action() == Adjuster.Action.DONE) {
                    met++;
                    assertTrue(Math.abs(it.zeroOffHz()) < 2e3, it.toString());
                    assertTrue(Double.isNaN(it.ended().gainDb()), it.toString());
                }
            }
        }
        assertTrue(met >= 10, met + " of 12");
    }

    @Test
    void aSignalThatIsStillToBeTunedInIsFoundWhenItsRestingReadingWasSoughtInVain() throws BridgeException, Refused {
        Rehearsal rehearsal = Rehearsal.of(RandomPlans.of(54), 54);
        assertTrue(rehearsal.log().stream().anyMatch(Request.CheckDropped.class::isInstance));
        assertTrue(rehearsal.isFinished(), rehearsal.lastWord());
    }

    private static boolean warnsOfCoupling(SessionRecord record) {
        return record instanceof Guard.LateGain
                || (record instanceof Work.RoundEnded end && end.verdict() == RoundVerdict.CREEPING);
    }

    private static long warned(double kappa, int sets) throws BridgeException, Refused {
        Plan plan = stage("tarnfield-54a", "AM IF");
        long count = 0;
        for (int seed = 7000; seed < 7000 + sets; seed++) {
            PlannedSet set = PlannedSet.coupled(plan, seed, kappa);
            Tarnfield.design()
                    .misalignment()
                    .forEach((part, turns) -> set.knob(part.label()).ifPresent(knob -> knob.turnTo(turns)));
            Rehearsal rehearsal = Rehearsal.at(set, plan, seed);
            count += rehearsal.log().stream().anyMatch(RehearsalTest::warnsOfCoupling) ? 1 : 0;
        }
        return count;
    }

    @Test
    void isSilentAtCriticalCoupling() throws BridgeException, Refused {
        assertEquals(0, warned(1, 25));
    }

    @Test
    void theSamePlanAndSeedPlayTheSameRehearsal() throws BridgeException, Refused {
        Plan plan = stage("tarnfield-54a", "AM IF");
        assertEquals(Rehearsal.of(plan, 3).log(), Rehearsal.of(plan, 3).log());
        assertFalse(Rehearsal.of(plan, 3).log().equals(Rehearsal.of(plan, 4).log()));
    }
}

package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;
import org.slugpeak.core.word.Refused;

/** A session that is cut anywhere goes on from its log, at a set of which that much is done. Seeds by which nothing was chosen. */
class ResumedRehearsalTest {

    @ParameterizedTest
    @CsvSource({"tarnfield-54a, 7101", "tarnfield-54a, 7102", "quillmere-fm-8, 7103", "quillmere-fm-8, 7104"})
    void aPlanThatIsCutAnywhereIsMetFromItsLog(String name, long seed) throws BridgeException, Refused {
        Plan plan = PlanFiles.load(name, OptionalDouble.empty());
        List<SessionRecord> whole = Rehearsal.of(plan, seed).log();
        List<SessionRecord> cut = whole.subList(0, new SplittableRandom(seed).nextInt(whole.size()));
        Rehearsal resumed = Rehearsal.resumed(plan, seed, cut);
        assertTrue(resumed.isFinished(), resumed.lastWord());
        assertEquals(List.of(), resumed.notMet());
        assertTrue(Collections.disjoint(stagesOver(cut), stagesOver(resumed.log())), "what was over is not done again");
    }

    private static Set<String> stagesOver(List<SessionRecord> log) {
        return log.stream()
                .filter(Work.RoundEnded.class::isInstance)
                .map(Work.RoundEnded.class::cast)
                .filter(it -> !it.verdict().goesOn())
                .map(Work.RoundEnded::stage)
                .collect(Collectors.toSet());
    }
}

package org.slugpeak.bridge.sim;

import java.util.List;
import java.util.Optional;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.receiver.IfPerformance;
import org.slugpeak.core.session.Caution;

/**
 * What a demonstration came to, as the simulation knows it; nothing here was measured by the tool, but beside the fault that was
 * seeded stands what the tool said. Immutable; any thread may
 * use it.
 *
 * @param steps what each turn of an adjuster brought, in order
 * @param before the set as it came
 * @param after the set as it is left
 * @param leftDb what the set as it is left has less than the best there is
 * @param fault what was seeded
 * @param suspicions what the tool said was possibly wrong, in order
 */
public record DemoOutcome(
        List<Step> steps,
        IfPerformance before,
        IfPerformance after,
        double leftDb,
        Optional<Fault> fault,
        List<Caution.Suspected> suspicions) {

    public DemoOutcome {
        steps = List.copyOf(steps);
        suspicions = List.copyOf(suspicions);
    }

    /**
     * One adjuster, set once. Immutable; any thread may use it.
     *
     * @param adjuster its name
     * @param gainDb what setting it brought
     * @param leftDb what this adjuster alone could still bring when the hand left it
     */
    public record Step(String adjuster, double gainDb, double leftDb) {}

    /**
     * What the tool should have said of the seeded fault.
     *
     * @return empty where none was seeded
     */
    public Optional<Suspicion> meant() {
        return fault.map(Seeded::meantBy);
    }
}

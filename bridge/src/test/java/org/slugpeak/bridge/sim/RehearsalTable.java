package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.word.Refused;

/**
 * Rehearses the plans that come along and random ones, and tells what was met: {@code RehearsalTable SEEDS PLANS [NAME]}, as many
 * seeds of each of the former and one seed of so many random ones. Takes minutes; for the profile {@code bench} and by hand.
 */
final class RehearsalTable {

    private RehearsalTable() {}

    public static void main(String[] args) throws BridgeException, Refused {
        int seeds = Integer.parseInt(args[0]);
        int random = Integer.parseInt(args[1]);
        for (String name : args.length > 2 ? List.of(args[2]) : PlanFiles.SHIPPED) {
            Plan plan = PlanFiles.load(
                    name, name.equals("am-superhet") ? OptionalDouble.of(455e3) : OptionalDouble.empty());
            List<Rehearsal> done = new ArrayList<>();
            for (int seed = 1; seed <= seeds; seed++) {
                done.add(Rehearsal.of(plan, seed));
            }
            tell(name, done);
        }
        List<Rehearsal> done = new ArrayList<>();
        for (int seed = 1; seed <= random; seed++) {
            done.add(Rehearsal.of(RandomPlans.of(seed), seed));
        }
        tell("random", done);
    }

    private static void tell(String name, List<Rehearsal> done) {
        long met = done.stream()
                .filter(it -> it.isFinished() && it.notMet().isEmpty())
                .count();
        System.out.println(name + ": " + met + " of " + done.size() + " met in every step");
        for (Rehearsal it : done) {
            if (!it.isFinished()) {
                System.out.println("  " + it.name() + ": " + it.lastWord());
            }
            it.notMet().forEach(step -> System.out.println("  " + it.name() + ": " + step));
        }
    }
}

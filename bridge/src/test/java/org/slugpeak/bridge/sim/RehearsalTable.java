package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.word.Refused;

/**
 * Rehearses plans that come along or random ones, and tells what was met: {@code RehearsalTable FIRST LAST NAME...}, these seeds of
 * each plan; {@code random} is another plan with each seed. Takes minutes; for the profile {@code bench} and by hand.
 */
final class RehearsalTable {

    /** What peaks that are called equal may differ by. */
    private static final double EQUAL = 0.01;

    private RehearsalTable() {}

    public static void main(String[] args) throws BridgeException, Refused {
        long first = Long.parseLong(args[0]);
        long last = Long.parseLong(args[1]);
        for (String name : List.of(args).subList(2, args.length)) {
            List<Rehearsal> done = new ArrayList<>();
            for (long seed = first; seed <= last; seed++) {
                done.add(Rehearsal.of(plan(name, seed), seed));
            }
            tell(name, done);
        }
    }

    private static Plan plan(String name, long seed) throws BridgeException {
        return switch (name) {
            case "random" -> RandomPlans.of(seed);
            case "am-superhet" -> PlanFiles.load(name, OptionalDouble.of(455e3));
            default -> PlanFiles.load(name, OptionalDouble.empty());
        };
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
        List<Double> peaks = done.stream()
                .filter(Rehearsal::isFinished)
                .flatMap(it -> it.asymmetries().stream())
                .toList();
        long equal = peaks.stream().filter(it -> Math.abs(it) <= EQUAL).count();
        System.out.println("  peaks of discriminators equal within 1 %: " + equal + " of " + peaks.size());
    }
}

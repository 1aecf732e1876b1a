package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.rehearsal.PlannedSet;
import org.slugpeak.core.word.Refused;

/**
 * Fills sheets at made-up sets, each before and after the work, and tells how far the figures are off and how honest their uncertainties:
 * {@code SheetTable PLAN FIRST LAST [LEVEL STEP]}, where LEVEL and STEP are how far an attenuator may be off in common and at each setting,
 * dB. Takes minutes; for the profile {@code bench} and by hand.
 */
final class SheetTable {

    private SheetTable() {}

    public static void main(String[] args) throws BridgeException, Refused {
        Plan plan = PlanFiles.load(args[0], OptionalDouble.empty());
        double levelDb = args.length > 4 ? Double.parseDouble(args[3]) : 0;
        double stepDb = args.length > 4 ? Double.parseDouble(args[4]) : 0;
        Map<FigureKind, List<SheetRun.Held>> all = new EnumMap<>(FigureKind.class);
        int bounds = 0;
        int missing = 0;
        int settings = 0;
        for (long seed = Long.parseLong(args[1]); seed <= Long.parseLong(args[2]); seed++) {
            for (boolean inOrder : new boolean[] {false, true}) {
                PlannedSet set = PlannedSet.of(plan, seed);
                ErringAttenuator attenuator = new ErringAttenuator(seed, levelDb, stepDb);
                SheetRun run = SheetRun.of(plan, inOrder ? set.inOrder(any -> true) : set, seed, attenuator);
                for (SheetRun.Held held : run.held()) {
                    all.computeIfAbsent(held.figure().kind(), any -> new ArrayList<>())
                            .add(held);
                    if (!isMet(held, attenuator) || Math.abs(held.pull()) > 4) {
                        System.out.println("seed " + seed + (inOrder ? " in order: " : ": ") + held);
                    }
                }
                bounds += count(run, Figure.Outcome.AT_LEAST) + count(run, Figure.Outcome.AT_MOST);
                missing += count(run, Figure.Outcome.NOT_MEASURED) + (run.isOver() ? 0 : 1000);
                settings += run.settings();
            }
        }
        ErringAttenuator limits = new ErringAttenuator(0, levelDb, stepDb);
        all.forEach((kind, held) -> tell(kind, held, limits));
        System.out.println(bounds + " bounds, " + missing + " not measured, " + settings + " settings");
    }

    /**
     * As the sheet promises: ratios within 0.3 dB, inputs within 1 dB beside what the attenuator errs, widths within 3 percent. The
     * gain control is a ratio to a level of which the attenuator says that it is 0.1 V.
     */
    static boolean isMet(SheetRun.Held held, ErringAttenuator attenuator) {
        double most = switch (held.figure().kind().counts()) {
            case VOLTS_EMF -> 1 + attenuator.mostDb();
            case DECIBELS -> 0.3 + (held.figure().kind() == FigureKind.AVC ? attenuator.mostDb() : 0);
            case HERTZ -> 0.03;
            case RATIO -> 0.01;
        };
        return Math.abs(held.off()) <= most;
    }

    private static int count(SheetRun run, Figure.Outcome outcome) {
        return (int)
                run.figures().stream().filter(each -> each.outcome() == outcome).count();
    }

    private static void tell(FigureKind kind, List<SheetRun.Held> held, ErringAttenuator limits) {
        double[] off =
                held.stream().mapToDouble(it -> Math.abs(it.off())).sorted().toArray();
        double pulls = Math.sqrt(
                held.stream().mapToDouble(it -> it.pull() * it.pull()).average().orElse(Double.NaN));
        long beyondTwo = held.stream().filter(it -> Math.abs(it.pull()) > 2).count();
        System.out.printf(
                "%-18s n %4d  median %.3f  worst %.3f  met %d  pulls %.2f  beyond 2: %d%n",
                kind.code(),
                held.size(),
                off[off.length / 2],
                off[off.length - 1],
                held.stream().filter(it -> isMet(it, limits)).count(),
                pulls,
                beyondTwo);
    }
}

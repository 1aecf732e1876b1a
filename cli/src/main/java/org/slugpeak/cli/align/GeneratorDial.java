package org.slugpeak.cli.align;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.slugpeak.bridge.scale.PointFile;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.cli.arithmetic.ScaleText;
import org.slugpeak.cli.quantity.Frequency;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.word.Refused;

/** How the dial of a generator errs that a hand sets: each step of a plan is told its mark. Stateless; any thread may use it. */
public final class GeneratorDial {

    private GeneratorDial() {}

    /**
     * A plan with the marks.
     *
     * @param plan to be carried out
     * @param file with the known points of the dial
     * @param err told once of each frequency that lies outside of them
     * @return the plan; steps outside stay as they are
     * @throws BadInput where the file cannot be read, or its points are those of no dial
     */
    public static Plan mark(Plan plan, Path file, PrintWriter err) throws BadInput {
        DialScale scale = scale(file);
        List<KnownPoint> points = scale.points();
        KnownPoint last = points.get(points.size() - 1);
        plan.plannedHz().stream()
                .filter(hz -> scale.dialFor(hz).isEmpty())
                .forEach(hz ->
                        err.println(ScaleText.outsideOfTrue(hz, points.get(0).trueHz(), last.trueHz())));
        return plan.marked(scale);
    }

    private static DialScale scale(Path file) throws BadInput {
        try {
            double knownToHz = new Frequency().convert(ScaleText.USUAL_KNOWN_TO);
            double readToHz = new Frequency().convert(ScaleText.USUAL_READ_TO);
            return DialScale.through(PointFile.read(file, knownToHz, false), readToHz);
        } catch (Refused e) {
            throw new BadInput(file + ": " + e.reason(), e);
        }
    }
}

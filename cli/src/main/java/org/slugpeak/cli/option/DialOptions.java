package org.slugpeak.cli.option;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.slugpeak.bridge.scale.PointFile;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.cli.arithmetic.ScaleText;
import org.slugpeak.cli.quantity.Frequency;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.word.Refused;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** How the dial of a generator errs that a hand sets. */
public final class DialOptions {

    @Option(names = "--generator-dial", paramLabel = "FILE")
    private Optional<Path> points = Optional.empty();

    /** Whether anybody told. */
    public boolean isGiven() {
        return points.isPresent();
    }

    /**
     * The scale of the dial.
     *
     * @param generator that is set from here, if any
     * @param plannedHz what will be set, Hz
     * @param err told in one line which of them lie outside of the known points
     * @return empty where nobody told how the dial errs
     * @throws BadInput where the file cannot be read, or its points are those of no dial
     */
    public Optional<DialScale> scale(GeneratorOptions generator, List<Double> plannedHz, PrintWriter err)
            throws BadInput {
        if (points.isEmpty()) {
            return Optional.empty();
        }
        if (generator.isGiven()) {
            throw new TypeConversionException(
                    "--generator-dial is for a dial that a hand sets: leave it out with --generator");
        }
        DialScale scale = scale(points.get());
        KnownPoint first = scale.points().get(0);
        KnownPoint last = scale.points().get(scale.points().size() - 1);
        List<Double> outside = plannedHz.stream()
                .filter(hz -> scale.dialFor(hz).isEmpty())
                .distinct()
                .toList();
        if (!outside.isEmpty()) {
            err.println(ScaleText.noMarks(outside, first.trueHz(), last.trueHz()));
        }
        return Optional.of(scale);
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

package org.slugpeak.bridge.scale;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.slugpeak.bridge.disk.Draft;
import org.slugpeak.bridge.file.PointLines;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.text.Listing;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.word.Refused;

/**
 * Known points of a dial, one a line: {@code dial,true,uncertainty} in kHz, the last one optional. Blank lines, lines that
 * begin with {@code #} and the heading are skipped. All methods may be called by any thread.
 */
public final class PointFile {

    private static final String HEADING = "dial_kHz,true_kHz,uncertainty_kHz";

    private PointFile() {}

    /**
     * Reads the points.
     *
     * @param file where
     * @param usualSigmaHz uncertainty where a line gives none, Hz
     * @param decimalComma whether numbers are written {@code 1,25}, whatever else they might mean
     * @return in the order of the file
     * @throws BadInput where the file cannot be read; names every bad line at once
     */
    public static List<KnownPoint> read(Path file, double usualSigmaHz, boolean decimalComma) throws BadInput {
        List<KnownPoint> points = new ArrayList<>();
        List<String> mistakes = new ArrayList<>();
        for (PointLines.Line line : PointLines.read(file, decimalComma)) {
            try {
                points.add(point(line.numbers(), usualSigmaHz));
            } catch (Refused e) {
                mistakes.add("line " + line.number());
            }
        }
        if (!mistakes.isEmpty()) {
            throw new BadInput(file + ", " + Listing.of(mistakes, ", ")
                    + ": expected dial,true or dial,true,uncertainty in kHz, for example 455,457.2,0.1");
        }
        return List.copyOf(points);
    }

    private static KnownPoint point(List<Double> numbers, double usualSigmaHz) throws Refused {
        if (numbers.size() < 2 || numbers.size() > 3) {
            throw new Refused("two or three fields");
        }
        double sigmaHz = numbers.size() == 3 ? numbers.get(2) * 1e3 : usualSigmaHz;
        return KnownPoint.of(numbers.get(0) * 1e3, numbers.get(1) * 1e3, sigmaHz);
    }

    /**
     * Writes the points, in place of older points.
     *
     * @param file where
     * @param points what
     * @throws BadInput where something else is there, or they cannot be written
     */
    public static void write(Path file, List<KnownPoint> points) throws BadInput {
        List<String> lines = new ArrayList<>(List.of(HEADING));
        for (KnownPoint each : points) {
            lines.add(String.format(
                    Locale.ROOT, "%s,%s,%s", each.dialHz() / 1e3, each.trueHz() / 1e3, each.sigmaHz() / 1e3));
        }
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            refuseUnlessPoints(file);
        }
        try (Draft draft = Draft.of(file)) {
            draft.out().write((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
            draft.replace();
        } catch (IOException e) {
            throw new BadInput(
                    "cannot write the points to " + file + " (" + e.getMessage() + "): check folder, permissions and"
                            + " room; what was there is as it was",
                    e);
        }
    }

    private static void refuseUnlessPoints(Path file) throws BadInput {
        try {
            read(file, 1, false);
        } catch (BadInput other) {
            throw new BadInput(
                    file + " is there already and holds no points of a dial: nothing else is ever replaced; choose"
                            + " another name",
                    other);
        }
    }
}

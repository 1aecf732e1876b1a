package org.slugpeak.bridge.scale;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.core.scale.KnownPoint;

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
     * @return in the order of the file
     * @throws BadInput where the file cannot be read; names every bad line at once
     */
    public static List<KnownPoint> read(Path file, double usualSigmaHz) throws BadInput {
        List<KnownPoint> points = new ArrayList<>();
        List<String> mistakes = new ArrayList<>();
        List<String> lines = lines(file);
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.isEmpty() || line.startsWith("#") || line.equals(HEADING)) {
                continue;
            }
            try {
                points.add(point(line.split(",", -1), usualSigmaHz));
            } catch (IllegalArgumentException e) {
                mistakes.add("line " + (i + 1));
            }
        }
        if (!mistakes.isEmpty()) {
            throw new BadInput(file + ", " + String.join(", ", mistakes)
                    + ": expected dial,true or dial,true,uncertainty in kHz, for example 455,457.2,0.1");
        }
        return List.copyOf(points);
    }

    private static List<String> lines(Path file) throws BadInput {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new BadInput("cannot read the points in " + file + ": check that the file is there and is text", e);
        }
    }

    private static KnownPoint point(String[] fields, double usualSigmaHz) {
        if (fields.length < 2 || fields.length > 3) {
            throw new IllegalArgumentException("two or three fields");
        }
        double sigmaHz = fields.length == 3 ? Double.parseDouble(fields[2]) * 1e3 : usualSigmaHz;
        return new KnownPoint(Double.parseDouble(fields[0]) * 1e3, Double.parseDouble(fields[1]) * 1e3, sigmaHz);
    }

    /**
     * Writes the points, over what is there.
     *
     * @param file where
     * @param points what
     * @throws BadInput where it cannot be written
     */
    public static void write(Path file, List<KnownPoint> points) throws BadInput {
        List<String> lines = new ArrayList<>(List.of(HEADING));
        for (KnownPoint each : points) {
            lines.add(String.format(
                    Locale.ROOT, "%s,%s,%s", each.dialHz() / 1e3, each.trueHz() / 1e3, each.sigmaHz() / 1e3));
        }
        try {
            Files.write(file, lines, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new BadInput("cannot write the points to " + file + ": check the folder and its permissions", e);
        }
    }
}

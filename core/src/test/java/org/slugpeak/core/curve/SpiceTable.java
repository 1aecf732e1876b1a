package org.slugpeak.core.curve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.slugpeak.core.word.Refused;

/** A response that a circuit simulator (ngspice 39) gave; first column kHz. */
final class SpiceTable {

    private SpiceTable() {}

    static ResponseCurve curve(String file, int column) throws Refused {
        Path path = Path.of(System.getProperty("slugpeak.shared"), "reference", "spice", file);
        try {
            List<ResponsePoint> points = new ArrayList<>();
            for (String line : Files.readAllLines(path)) {
                if (Character.isDigit(line.charAt(0))) {
                    String[] fields = line.split(",", -1);
                    points.add(
                            new ResponsePoint(Double.parseDouble(fields[0]) * 1e3, Double.parseDouble(fields[column])));
                }
            }
            return ResponseCurve.through(points);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

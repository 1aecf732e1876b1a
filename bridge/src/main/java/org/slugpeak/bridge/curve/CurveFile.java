package org.slugpeak.bridge.curve;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.slugpeak.bridge.log.LogReader;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.curve.CurveRecords;
import org.slugpeak.core.curve.ResponsePoint;
import org.slugpeak.core.session.SessionRecord;

/**
 * Points of a response curve: text with {@code frequency,level} in kHz and the unit of the readings, one a line; blank lines,
 * lines that begin with {@code #} and one heading are skipped. Or a session log with a curve in it. All methods may be called by
 * any thread.
 */
public final class CurveFile {

    private static final String HEADING = "frequency_kHz,level,dB";
    private static final String LOG = ".jsonl";

    private CurveFile() {}

    /**
     * Reads the points.
     *
     * @param file text, or a session log where its name ends in {@code .jsonl}
     * @return in the order of the file
     * @throws BridgeException where the file cannot be read; names every bad line of a text at once
     */
    public static List<ResponsePoint> read(Path file) throws BridgeException {
        return file.toString().endsWith(LOG) ? ofLog(file) : ofText(file);
    }

    private static List<ResponsePoint> ofLog(Path file) throws BadLog {
        CurveRecords records = new CurveRecords();
        try (LogReader reader = LogReader.open(file, (line, problem) -> {})) {
            for (var next = reader.next(); next.isPresent(); next = reader.next()) {
                SessionRecord record = next.get();
                records.take(record);
            }
        }
        if (records.points().isEmpty()) {
            throw new BadLog(file + " has no response curve in it: make one with slugpeak curve --log");
        }
        return records.points();
    }

    private static List<ResponsePoint> ofText(Path file) throws BadInput {
        List<ResponsePoint> points = new ArrayList<>();
        List<String> mistakes = new ArrayList<>();
        List<String> lines = lines(file);
        boolean headingAllowed = true;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            boolean heading = headingAllowed && !line.isEmpty() && Character.isLetter(line.charAt(0));
            if (line.isEmpty() || line.startsWith("#") || heading) {
                continue;
            }
            headingAllowed = false;
            try {
                points.add(point(line.split("[,;]", -1)));
            } catch (IllegalArgumentException e) {
                mistakes.add("line " + (i + 1));
            }
        }
        if (!mistakes.isEmpty()) {
            throw new BadInput(file + ", " + String.join(", ", mistakes)
                    + ": expected frequency in kHz and level, both above zero, for example 455,0.82");
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

    private static ResponsePoint point(String[] fields) {
        if (fields.length < 2) {
            throw new IllegalArgumentException("two fields or more");
        }
        return new ResponsePoint(Double.parseDouble(fields[0].strip()) * 1e3, Double.parseDouble(fields[1].strip()));
    }

    /**
     * Writes the points to a new file.
     *
     * @param file must not be there yet
     * @param points what
     * @throws BadInput where it is there, or cannot be written
     */
    public static void write(Path file, List<ResponsePoint> points) throws BadInput {
        double top = points.stream().mapToDouble(ResponsePoint::level).max().orElse(1);
        List<String> lines = new ArrayList<>(List.of(HEADING));
        for (ResponsePoint each : points) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%s,%s,%.3f",
                    each.hz() / 1e3,
                    each.level(),
                    20 * Math.log10(each.level() / top) + 0.0));
        }
        try {
            Files.write(file, lines, StandardCharsets.UTF_8, java.nio.file.StandardOpenOption.CREATE_NEW);
        } catch (IOException e) {
            throw new BadInput(
                    "cannot write the points to " + file + ": is it there already, may the folder be written to?", e);
        }
    }
}

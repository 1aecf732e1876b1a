package org.slugpeak.bridge.curve;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.slugpeak.bridge.disk.Draft;
import org.slugpeak.bridge.file.PointLines;
import org.slugpeak.bridge.log.LogReader;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.text.Listing;
import org.slugpeak.core.curve.CurveRecords;
import org.slugpeak.core.curve.ResponsePoint;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.word.Refused;

/**
 * Points of a response curve: text with {@code frequency,level} in kHz and the unit of the readings, one a line; blank lines,
 * lines that begin with {@code #} and one heading are skipped. Or a session log with a curve in it. All methods may be called by
 * any thread.
 */
public final class CurveFile {

    private static final String HEADING = "frequency_kHz,level,dB";
    /** How the name of a session log ends. */
    public static final String LOG = ".jsonl";

    private CurveFile() {}

    /**
     * Reads the points.
     *
     * @param file text, or a session log where its name ends in {@code .jsonl}
     * @param decimalComma whether numbers of a text are written {@code 1,25}, whatever else they might mean
     * @return in the order of the file
     * @throws BridgeException where the file cannot be read; names every bad line of a text at once
     */
    public static List<ResponsePoint> read(Path file, boolean decimalComma) throws BridgeException {
        return file.toString().endsWith(LOG) ? ofLog(file) : ofText(file, decimalComma);
    }

    private static List<ResponsePoint> ofLog(Path file) throws BadLog {
        CurveRecords records = new CurveRecords();
        try (LogReader reader = LogReader.open(file, (line, problem) -> {})) {
            reader.drainTo(entry -> records.take(entry.record()));
        }
        if (records.points().isEmpty()) {
            throw new BadLog(file + " has no response curve in it: make one with slugpeak curve --log");
        }
        return records.points();
    }

    private static List<ResponsePoint> ofText(Path file, boolean decimalComma) throws BadInput {
        List<ResponsePoint> points = new ArrayList<>();
        List<String> mistakes = new ArrayList<>();
        for (PointLines.Line line : PointLines.read(file, decimalComma)) {
            try {
                points.add(point(line.numbers()));
            } catch (Refused e) {
                mistakes.add("line " + line.number());
            }
        }
        if (!mistakes.isEmpty()) {
            throw new BadInput(file + ", " + Listing.of(mistakes, ", ")
                    + ": expected frequency in kHz, above zero, and level, for example 455,0.82");
        }
        return List.copyOf(points);
    }

    private static ResponsePoint point(List<Double> numbers) throws Refused {
        if (numbers.size() < 2) {
            throw new Refused("two fields or more");
        }
        return ResponsePoint.of(numbers.get(0) * 1e3, numbers.get(1));
    }

    /**
     * Writes the points to a new file.
     *
     * @param file must not be there yet
     * @param points what
     * @throws BadInput where it is there, or cannot be written
     */
    public static void write(Path file, List<ResponsePoint> points) throws BadInput {
        double top = points.stream()
                .mapToDouble(point -> Math.abs(point.level()))
                .max()
                .orElse(1);
        List<String> lines = new ArrayList<>(List.of(HEADING));
        for (ResponsePoint each : points) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%s,%s,%.3f",
                    each.hz() / 1e3,
                    each.level(),
                    Rounded.to(Decibels.of(Math.abs(each.level()) / top), 3)));
        }
        try (Draft draft = Draft.of(file)) {
            draft.out().write((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
            draft.create();
        } catch (FileAlreadyExistsException e) {
            throw new BadInput(file + " is there already and is not touched: choose another name", e);
        } catch (IOException e) {
            throw new BadInput(
                    "cannot write the points to " + file + " (" + e.getMessage() + "): is there room, may you write in"
                            + " its folder?",
                    e);
        }
    }
}

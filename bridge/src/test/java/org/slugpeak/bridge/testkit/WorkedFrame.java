package org.slugpeak.bridge.testkit;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A row of shared/reference/meters/frames.csv, which an encoder made from public facts of the chips; its README says which fact
 * has which source.
 *
 * @param family of meters
 * @param bytes one frame
 * @param meaning volts, or a word
 * @param note what is special about it
 */
@SuppressWarnings("ArrayRecordComponent") // looked at, never compared
public record WorkedFrame(String family, byte[] bytes, String meaning, String note) {

    /** All of them, in the order of the table. */
    public static List<WorkedFrame> all() throws IOException {
        Path file = Path.of(System.getProperty("slugpeak.shared"), "reference", "meters", "frames.csv");
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader in = Files.newBufferedReader(file);
                var parser = format.parse(in)) {
            return parser.stream().map(WorkedFrame::of).toList();
        }
    }

    private static WorkedFrame of(CSVRecord row) {
        return new WorkedFrame(
                row.get("family"),
                HexFormat.ofDelimiter(" ").parseHex(row.get("hex")),
                row.get("meaning"),
                row.get("note"));
    }

    /** The rows for an eight bit view are read by the description for seven. */
    public String description() {
        return family.replace("+parity", "");
    }

    /** Whether it is a reading without any doubt. */
    public boolean mayBeUsed() {
        return Stream.of("do not use", "mark it", "filter is on", "only right if", "neither")
                .noneMatch(note::contains);
    }

    @Override
    public String toString() {
        return family + ": " + note;
    }
}

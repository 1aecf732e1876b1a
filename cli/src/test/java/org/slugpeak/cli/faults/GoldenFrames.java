package org.slugpeak.cli.faults;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The worked frames of one family of hand-held meters (shared/reference/meters/frames.csv), one behind the other, some twice over as
 * a meter that stands still sends them.
 *
 * @param name of its description
 * @param bytes what a meter might send
 */
@SuppressWarnings("ArrayRecordComponent") // damaged, never compared
record GoldenFrames(String name, byte[] bytes) {

    private static final String WITH_PARITY = "+parity";

    static List<GoldenFrames> families(Path shared) throws IOException {
        Map<String, ByteArrayOutputStream> all = new LinkedHashMap<>();
        for (String row : Files.readAllLines(shared.resolve("reference/meters/frames.csv"))) {
            String[] cells = row.split(",", 3);
            if (!cells[0].equals("family") && !cells[0].endsWith(WITH_PARITY)) {
                byte[] frame = HexFormat.ofDelimiter(" ").parseHex(cells[1]);
                ByteArrayOutputStream sent = all.computeIfAbsent(cells[0], family -> new ByteArrayOutputStream());
                sent.writeBytes(frame);
                sent.writeBytes(frame);
            }
        }
        return all.entrySet().stream()
                .map(each -> new GoldenFrames(each.getKey(), each.getValue().toByteArray()))
                .toList();
    }
}

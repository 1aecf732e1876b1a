package org.slugpeak.bridge.sim;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.SessionRecord;

/**
 * Seeds each fault into the simulated bench, has the operator make the whole job with every check, and counts what the tool
 * suspects. {@code mvn -P bench -pl bridge -am -DskipTests verify} writes the full table into docs/faults.md.
 */
final class FaultTable {

    private static final int SEEDS = 20;

    /** Far from the seeds that the limits were chosen on. */
    private static final long FIRST_SEED = 1001;

    private static final String BEGIN = "<!-- table -->";
    private static final String END = "<!-- end of table -->";

    private FaultTable() {}

    /** All that the tool suspects in one job. */
    static List<String> suspected(Optional<Fault> fault, long seed) throws BridgeException {
        DemoSettings settings = DemoSettings.ofSeed(seed);
        Demo demo = Demo.withEverything(fault.map(settings::withFault).orElse(settings));
        return suspicions(SimRun.of(demo.source(), Double.MAX_VALUE));
    }

    static List<String> suspicions(List<SessionRecord> records) {
        List<String> said = new ArrayList<>();
        for (SessionRecord record : records) {
            if (record instanceof Caution.Suspected it) {
                said.add(it.suspicion().code());
            } else if (record instanceof Caution.WidePeak) {
                said.add("wide-peak");
            }
        }
        return said;
    }

    private static String row(Optional<Fault> fault) throws BridgeException {
        Map<String, Integer> counts = new TreeMap<>();
        int silent = 0;
        for (long seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
            List<String> topics = suspected(fault, seed);
            silent += topics.isEmpty() ? 1 : 0;
            topics.forEach(topic -> counts.merge(topic, 1, Integer::sum));
        }
        StringBuilder row = new StringBuilder("| " + fault.map(Fault::code).orElse("(none)") + " |");
        for (Fault column : Fault.values()) {
            Integer count = counts.get(Seeded.meantBy(column).code());
            row.append(' ').append(count == null ? "" : count).append(" |");
        }
        return row.append(' ').append(silent == 0 ? "" : silent).append(" |").toString();
    }

    /** Writes the table between the two comments of the page. */
    public static void main(String[] args) throws IOException, BridgeException {
        List<String> table = new ArrayList<>();
        StringBuilder head = new StringBuilder("| seeded |");
        StringBuilder rule = new StringBuilder("|---|");
        for (Fault column : Fault.values()) {
            head.append(' ').append(Seeded.meantBy(column).code()).append(" |");
            rule.append("---|");
        }
        table.add(head.append(" nothing |").toString());
        table.add(rule.append("---|").toString());
        table.add(row(Optional.empty()));
        for (Fault fault : Fault.values()) {
            table.add(row(Optional.of(fault)));
        }
        Path page = Path.of(args[0]);
        String text = Files.readString(page);
        String before = text.substring(0, text.indexOf(BEGIN) + BEGIN.length());
        String after = text.substring(text.indexOf(END));
        Files.writeString(page, before + "\n" + String.join("\n", table) + "\n" + after);
    }
}

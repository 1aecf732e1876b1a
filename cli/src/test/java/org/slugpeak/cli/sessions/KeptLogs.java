package org.slugpeak.cli.sessions;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.bridge.source.BridgeException;

/** A folder of logs written by hand, and an index of it. */
final class KeptLogs {

    private static final String LOG = """
            {"type":"session","version":1,"startedAt":"%s","source":"/dev/ttyUSB0","quantity":"dc voltage","unit":"V","seek":"peak","dwell":2,"tool":"slugpeak 0.1.0"}
            {"type":"advice","t":0,"topic":"plan","text":"%s","amount":null}
            {"type":"mark","t":0,"text":"%s"}
            {"type":"adjuster","t":0,"name":"%s","action":"begin","before":0.5,"after":null,"gainDb":null}
            {"type":"reading","t":0,"value":0.5,"smoothed":0.5,"best":0.5,"bestSigma":0.001,"ofBest":1,"trend":"steady","condition":"ok"}
            {"type":"reading","t":60,"value":1.0,"smoothed":1.0,"best":1.0,"bestSigma":0.001,"ofBest":1,"trend":"rising","condition":"ok"}
            {"type":"adjuster","t":60,"name":"%s","action":"done","before":0.5,"after":1.0,"gainDb":6.02}
            {"type":"end","t":60,"readings":2,"reason":"quit"}
            """;

    final Path logs;
    private final IndexPlace place;

    /** How many logs each refresh has read. */
    final List<Integer> reads = new ArrayList<>();

    KeptLogs(Path folder) throws IOException {
        logs = Files.createDirectories(folder.resolve("logs"));
        place = new IndexPlace.Embedded(folder.resolve("index"));
    }

    static String log(String startedAt, String plan, String note, String adjuster) {
        return LOG.formatted(startedAt, plan, note, adjuster, adjuster);
    }

    Path write(String name, String text) throws IOException {
        Path file = logs.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    /** Follows the folder, then looks. */
    List<FoundSession> find(SessionQuery query) throws BridgeException {
        reads.add(0);
        try (SessionIndex index = SessionIndex.open(place, "left bench", logs.toString(), () -> {})) {
            new IndexRefresh(logs, index).run(count -> reads.set(reads.size() - 1, count));
            return index.find(query);
        }
    }

    List<String> files(SessionQuery query) throws BridgeException {
        return find(query).stream().map(FoundSession::file).toList();
    }

    static SessionQuery words(String... words) {
        return new SessionQuery(
                List.of(words),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}

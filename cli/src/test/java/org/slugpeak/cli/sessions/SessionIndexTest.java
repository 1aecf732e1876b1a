package org.slugpeak.cli.sessions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.cli.words.ReportFact;

class SessionIndexTest {

    private static final String OLD = KeptLogs.log("2025-03-01T09:00:00Z", "Tarnfield 54A", "serial=20417", "T1 top");
    private static final String NEW =
            KeptLogs.log("2026-11-25T09:00:00Z", "Larkmoor 6C", "hum after ten minutes", "T2 50%");

    @TempDir
    private Path folder;

    private KeptLogs kept;

    @BeforeEach
    void twoLogs() throws Exception {
        kept = new KeptLogs(folder);
        kept.write("2025/old.jsonl", OLD);
        kept.write("new.jsonl", NEW);
    }

    @Test
    void everythingIsListedTheNewestFirst() throws Exception {
        assertEquals(List.of("new.jsonl", "2025/old.jsonl"), kept.files(SessionQuery.everything()));
    }

    @Test
    void aSessionIsFoundByWhateverItTells() throws Exception {
        assertEquals(List.of("2025/old.jsonl"), kept.files(KeptLogs.words("TARNFIELD", "t1")));
        assertEquals(List.of("new.jsonl"), kept.files(KeptLogs.words("ten minutes")));
        assertEquals(List.of(), kept.files(KeptLogs.words("tarnfield", "hum")));
        assertEquals(List.of("2025/old.jsonl"), kept.files(query("tarn", "", "")));
        assertEquals(List.of("2025/old.jsonl"), kept.files(query("", "0417", "")));
        assertEquals(List.of("2025/old.jsonl"), kept.files(query("", "", "T1")));
        Instant between = Instant.parse("2026-01-01T00:00:00Z");
        assertEquals(List.of("new.jsonl"), kept.files(dated(Optional.of(between), Optional.empty())));
        assertEquals(List.of("2025/old.jsonl"), kept.files(dated(Optional.empty(), Optional.of(between))));
    }

    @Test
    void whatWasWarnedOfIsFoundAndWhatTheHandWasToDoIsNot() throws Exception {
        String warned =
                "{\"type\":\"overload\",\"t\":60,\"cause\":\"flattening\",\"advice\":\"less signal, please\"}\n";
        String told =
                "{\"type\":\"advice\",\"t\":60,\"topic\":\"wrong-way\",\"text\":\"rather the other way\",\"amount\":1}\n";
        String done = "{\"type\":\"adjuster\",\"t\":60";
        kept.write("long.jsonl", OLD.replace(done, warned + told + done));
        assertEquals(List.of("long.jsonl"), kept.files(KeptLogs.words("less signal")));
        assertEquals(List.of(), kept.files(KeptLogs.words("other way")));
    }

    private static SessionQuery query(String set, String serial, String adjuster) {
        return new SessionQuery(
                List.of(), given(set), given(serial), given(adjuster), Optional.empty(), Optional.empty());
    }

    private static Optional<String> given(String text) {
        return Optional.of(text).filter(it -> !it.isEmpty());
    }

    private static SessionQuery dated(Optional<Instant> from, Optional<Instant> before) {
        return new SessionQuery(List.of(), Optional.empty(), Optional.empty(), Optional.empty(), from, before);
    }

    @Test
    void whatIsAWildCardInSqlIsALetterHere() throws Exception {
        assertEquals(List.of("new.jsonl"), kept.files(KeptLogs.words("50%")));
        assertEquals(List.of(), kept.files(KeptLogs.words("5_%")));
        assertEquals(List.of(), kept.files(KeptLogs.words("'; drop table slugpeak_sessions_2; --")));
        assertEquals(List.of(), kept.files(KeptLogs.words("!")));
    }

    @Test
    void whatTheLogTellsComesBackAsItWas() throws Exception {
        FoundSession found = kept.find(query("tarn", "", "")).get(0);
        KeptSession session = found.session();
        assertEquals("left bench", found.bench());
        assertEquals(Instant.parse("2025-03-01T09:00:00Z"), session.startedAt());
        assertEquals(Optional.of("20417"), session.facts().text(ReportFact.SERIAL));
        assertEquals("Tarnfield 54A", session.set());
        assertEquals(List.of("T1 top"), session.adjusters());
        assertEquals(60, session.seconds());
        assertEquals(2, session.readings());
        assertTrue(session.whole());
    }

    @Test
    void onlyWhatIsNewOrHasChangedIsRead() throws Exception {
        kept.find(SessionQuery.everything());
        kept.find(SessionQuery.everything());
        Path same = kept.logs.resolve("new.jsonl");
        Files.setLastModifiedTime(same, FileTime.fromMillis(0));
        kept.find(SessionQuery.everything());
        Files.writeString(same, NEW.replace("hum", "him"));
        assertEquals(List.of(), kept.files(KeptLogs.words("hum")));
        assertEquals(List.of(2, 0, 0, 1), kept.reads, "a date alone is no change");
    }

    @Test
    void aLogThatGrowsOrWasCutIsIndexedAsFarAsItReads() throws Exception {
        Path growing =
                kept.write("growing.jsonl", OLD.substring(0, OLD.indexOf("{\"type\":\"adjuster\",\"t\":60") + 20));
        FoundSession found = kept.find(KeptLogs.words("growing")).get(0);
        assertFalse(found.session().whole());
        assertEquals(List.of("T1 top"), found.session().adjusters());
        Files.writeString(growing, OLD);
        assertTrue(kept.find(KeptLogs.words("growing")).get(0).session().whole());
    }

    @Test
    void whatIsGoneIsForgottenAndWhatIsNoLogIsNotReadAgain() throws Exception {
        kept.write("other.jsonl", "{\"hello\":1}\n");
        kept.write("empty.jsonl", "");
        assertEquals(2, kept.find(SessionQuery.everything()).size());
        Files.delete(kept.logs.resolve("new.jsonl"));
        assertEquals(List.of("2025/old.jsonl"), kept.files(SessionQuery.everything()));
        assertEquals(List.of(4, 0), kept.reads);
    }

    @Test
    void anIndexThatWasDeletedOrSpoiltIsMadeAgainFromTheLogs() throws Exception {
        List<FoundSession> before = kept.find(SessionQuery.everything());
        Path file = folder.resolve("index.mv.db");
        Files.delete(file);
        assertEquals(before, kept.find(SessionQuery.everything()));
        Files.writeString(file, "spoilt ".repeat(2000));
        assertEquals(before, kept.find(SessionQuery.everything()));
        assertEquals(List.of(2, 2, 2), kept.reads);
    }

    @Test
    void hostileTextsAreKeptAsWhatCanBeShown() throws Exception {
        kept.write(
                "hostile.jsonl",
                KeptLogs.log("2026-01-01T00:00:00Z", "P\\u0000\\u001b[2J", "owner=A\\nB", "T\\n1 '; --"));
        kept.write("<b> 'a' $(x) \u202e.jsonl", OLD);
        assertEquals(List.of("2025/old.jsonl", "<b> 'a' $(x) \u202e.jsonl"), kept.files(query("", "20417", "")));
        KeptSession session = kept.find(KeptLogs.words("hostile.jsonl")).get(0).session();
        assertEquals("P??[2J", session.plan());
        assertEquals(Optional.of("A?B"), session.facts().text(ReportFact.OWNER));
        assertEquals(List.of("T?1 '; --"), session.adjusters());
    }

    @Test
    void severalBenchesInOnePlaceAreFoundTogetherAndDoNotDisturbEachOther() throws Exception {
        Path other = Files.createDirectories(folder.resolve("other"));
        Files.writeString(other.resolve("new.jsonl"), OLD);
        IndexPlace place = new IndexPlace.Embedded(folder.resolve("shared"));
        refresh(place, "left", kept.logs);
        refresh(place, "right", other);
        assertEquals(
                List.of("left: new.jsonl", "left: 2025/old.jsonl", "right: new.jsonl"),
                refresh(place, "left", kept.logs));
    }

    private static List<String> refresh(IndexPlace place, String bench, Path logs) throws Exception {
        try (SessionIndex index = SessionIndex.open(place, bench, logs.toString(), () -> {})) {
            new IndexRefresh(logs, index).run(count -> {});
            return index.find(SessionQuery.everything()).stream()
                    .map(each -> each.bench() + ": " + each.file())
                    .toList();
        }
    }
}

package org.slugpeak.cli.sessions;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.slugpeak.bridge.disk.Draft;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.cli.words.ReportFact;

/**
 * Sessions in one archive: {@code sessions.jsonl} has a line for each, {@code logs/} the logs themselves, as they are, which are JSON
 * Lines too. Where a log is on another bench only its line is there. One thread at a time.
 */
public final class SessionExport {

    private static final JsonFactory JSON = new JsonFactory();
    private static final String LOGS = "logs/";

    private final String bench;
    private final Path folder;

    /**
     * An export of what this bench has.
     *
     * @param bench its name
     * @param folder where its logs are
     */
    public SessionExport(String bench, Path folder) {
        this.bench = bench;
        this.folder = folder;
    }

    /**
     * Writes the archive.
     *
     * @param sessions in the order of its lines
     * @param file a new one
     * @throws BadInput where it is there already, or cannot be written; no half one is left
     */
    public void write(List<FoundSession> sessions, Path file) throws BadInput {
        try (Draft draft = Draft.of(file)) {
            ZipOutputStream zip = new ZipOutputStream(draft.out(), StandardCharsets.UTF_8);
            zip.putNextEntry(new ZipEntry("sessions.jsonl"));
            for (FoundSession each : sessions) {
                zip.write(line(each).getBytes(StandardCharsets.UTF_8));
            }
            for (FoundSession each : sessions) {
                if (Thread.currentThread().isInterrupted()) {
                    throw new InterruptedIOException("told to stop");
                }
                if (isHere(each)) {
                    zip.putNextEntry(new ZipEntry(entry(each)));
                    Files.copy(folder.resolve(each.file()), zip);
                }
            }
            zip.finish();
            draft.create();
        } catch (FileAlreadyExistsException e) {
            throw new BadInput(file + " is there already: nothing is ever replaced; choose another name", e);
        } catch (IOException e) {
            throw new BadInput(
                    "cannot write " + file + " (" + e.getMessage() + "): check folder, permissions and room", e);
        }
    }

    private boolean isHere(FoundSession it) {
        return it.bench().equals(bench) && it.folder().equals(folder.toString());
    }

    private static String entry(FoundSession it) {
        return LOGS + SafeText.line(it.file());
    }

    private String line(FoundSession it) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("bench", it.bench());
            json.writeStringField("file", SafeText.line(it.file()));
            json.writeStringField("log", isHere(it) ? entry(it) : "");
            session(json, it.session());
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    private static void session(JsonGenerator json, KeptSession it) throws IOException {
        json.writeStringField("startedAt", it.startedAt().toString());
        json.writeStringField("source", it.source());
        json.writeStringField("plan", it.plan());
        json.writeObjectFieldStart("facts");
        for (Map.Entry<ReportFact, String> fact : it.facts().given().entrySet()) {
            json.writeStringField(fact.getKey().key(), fact.getValue());
        }
        json.writeEndObject();
        json.writeNumberField("seconds", it.seconds());
        json.writeNumberField("readings", it.readings());
        json.writeBooleanField("whole", it.whole());
        json.writeArrayFieldStart("adjusters");
        for (String adjuster : it.adjusters()) {
            json.writeString(adjuster);
        }
        json.writeEndArray();
    }
}

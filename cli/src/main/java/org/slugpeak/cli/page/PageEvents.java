package org.slugpeak.cli.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.cli.cue.Overheard;
import org.slugpeak.cli.cue.ScoreSheet;
import org.slugpeak.cli.moment.Called;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;

/**
 * Writes what a browser is sent, as events of a stream (WHATWG HTML, server-sent events): {@code past} once, {@code work} when there is more of
 * it, {@code state} for every moment. Stateless; any thread may use it.
 */
final class PageEvents {

    private static final JsonFactory JSON = new JsonFactory();

    private PageEvents() {}

    static String past(List<PageState.Spot> spots) {
        return event("past", json -> {
            json.writeStartArray();
            for (PageState.Spot spot : spots) {
                json.writeStartArray();
                json.writeNumber(spot.tNanos() / 1e9);
                number(json, spot.height());
                json.writeEndArray();
            }
            json.writeEndArray();
        });
    }

    static String work(WorkDone work) {
        return event("work", json -> {
            json.writeStartObject();
            json.writeArrayFieldStart("adjusters");
            for (Adjuster each : work.adjusters()) {
                json.writeStartArray();
                json.writeString(SafeText.line(each.name()));
                json.writeString(gain(each));
                json.writeEndArray();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("points");
            for (CurveWork.PointTaken each : work.points()) {
                json.writeStartArray();
                json.writeNumber(each.hz() / 1e3);
                number(json, each.level());
                json.writeEndArray();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static String gain(Adjuster each) {
        return Double.isFinite(each.gainDb()) ? String.format(Locale.ROOT, "%+.1f", each.gainDb()) : "--";
    }

    static String state(PageState sight) {
        Told.Face face = sight.told().face();
        return event("state", json -> {
            json.writeStartObject();
            json.writeNumberField("n", sight.number());
            text(json, "act", face.act().name());
            text(json, "word", face.word());
            text(json, "line", face.line());
            text(json, "digits", face.reading().digits());
            text(json, "unit", face.reading().unit());
            text(json, "facts", face.facts());
            text(json, "trend", face.trend().code());
            text(json, "trendWords", face.trendWords());
            text(json, "title", face.title());
            text(json, "source", face.source());
            text(json, "alarm", face.alarm());
            text(json, "warning", face.warning());
            text(json, "note", face.note());
            json.writeNumberField("t", sight.spot().tNanos() / 1e9);
            numberField(json, "value", sight.spot().height());
            numberField(json, "best", face.best());
            json.writeNumberField(
                    "calls", sight.told().called().map(Called::number).orElse(0L));
            text(json, "call", sight.told().called().map(it -> it.call().name()).orElse(""));
            tone(json, sight.told().tone());
            json.writeEndObject();
        });
    }

    private static void tone(JsonGenerator json, Overheard.Tone tone) throws IOException {
        json.writeObjectFieldStart("tone");
        json.writeNumberField("number", tone.number());
        json.writeStringField("event", tone.event());
        json.writeNumberField("live", tone.liveHertz());
        json.writeStringField("liveGate", tone.liveGate());
        json.writeNumberField("reference", tone.referenceHertz());
        json.writeStringField("referenceGate", tone.referenceGate());
        json.writeEndObject();
    }

    /** How everything sounds, for whoever plays it. */
    static String score() {
        return json(json -> {
            json.writeStartObject();
            json.writeObjectFieldStart("events");
            for (Map.Entry<String, List<ScoreSheet.Played>> event :
                    ScoreSheet.events().entrySet()) {
                json.writeArrayFieldStart(event.getKey());
                for (ScoreSheet.Played note : event.getValue()) {
                    note(json, note);
                }
                json.writeEndArray();
            }
            json.writeEndObject();
            json.writeObjectFieldStart("gates");
            for (Map.Entry<String, List<Double>> gate : ScoreSheet.gates().entrySet()) {
                json.writeArrayFieldStart(gate.getKey());
                for (double seconds : gate.getValue()) {
                    json.writeNumber(seconds);
                }
                json.writeEndArray();
            }
            json.writeEndObject();
            json.writeEndObject();
        });
    }

    private static void note(JsonGenerator json, ScoreSheet.Played note) throws IOException {
        json.writeStartObject();
        json.writeNumberField("start", note.startSeconds());
        json.writeNumberField("duration", note.durationSeconds());
        json.writeNumberField("hertz", note.hertz());
        json.writeStringField("timbre", note.timbre());
        json.writeNumberField("gain", note.gain());
        json.writeEndObject();
    }

    private static void text(JsonGenerator json, String name, String text) throws IOException {
        json.writeStringField(name, SafeText.line(text));
    }

    private static void numberField(JsonGenerator json, String name, double number) throws IOException {
        json.writeFieldName(name);
        number(json, number);
    }

    /** JSON has no word for what is no number; seven digits are more than a display has dots. */
    private static void number(JsonGenerator json, double number) throws IOException {
        if (Double.isFinite(number)) {
            json.writeNumber((float) number);
        } else {
            json.writeNull();
        }
    }

    @FunctionalInterface
    private interface Content {
        void write(JsonGenerator json) throws IOException;
    }

    /** No line end can stand in JSON as it is written here, so that one line of data is enough. */
    private static String event(String kind, Content content) {
        return "event: " + kind + "\ndata: " + json(content) + "\n\n";
    }

    private static String json(Content content) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(text)) {
            content.write(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}

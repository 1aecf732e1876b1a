package org.slugpeak.bridge.file;

import java.util.Optional;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.source.TypedWord;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;

/** Turns lines into readings. Knows no file and no clock. One thread at a time. */
final class CsvDecoder {

    private static final String EXPECTED = "one reading a line, 'value' or 'seconds,value'";

    private final String name;
    private final Preamble preamble;
    private final Timing timing;
    private final boolean typed;
    private final Timeline timeline = new Timeline();

    private Optional<Reader> reader = Optional.empty();
    private long readings;
    private long garbled;
    private String firstProblem = "";

    /** A layout and what reads its lines. */
    private record Reader(TextLayout layout, Row row) {}

    /** A decoder of one text; the timing is for lines without a time of their own. */
    CsvDecoder(String name, CsvOptions options, Timing timing) {
        this(name, options, timing, false);
    }

    private CsvDecoder(String name, CsvOptions options, Timing timing, boolean typed) {
        this.name = name;
        this.preamble = new Preamble(name, options);
        this.timing = timing;
        this.typed = typed;
    }

    /**
     * A decoder of values that somebody types. Unless the options name columns there is one value a line, and a first line that
     * is no number is a mistake and no header.
     */
    static CsvDecoder ofTyped(String name, CsvOptions options, Timing timing) {
        CsvDecoder decoder = new CsvDecoder(name, options, timing, true);
        if (options.valueColumn().isEmpty() && options.timeColumn().isEmpty()) {
            decoder.settle(TextLayout.ofOneValue(options));
        }
        return decoder;
    }

    /** How the lines are built, once it is known. */
    Optional<TextLayout> layout() {
        return reader.map(Reader::layout);
    }

    /** The layout is known before the first line. */
    void settle(TextLayout layout) {
        reader = Optional.of(new Reader(layout, new Row(layout)));
    }

    /** Takes a line. */
    void line(Lines line, long arrivalNanos, SourceListener listener) throws BadInput {
        int from = begin(line);
        boolean above =
                reader.isPresent() && line.number() < reader.get().layout().firstRow();
        if (!line.isOverlong() && isBlankOrComment(line.bytes(), from, line.end())) {
            if (reader.isEmpty()) {
                preamble.comment(SampleLine.of(line, from));
            }
            return;
        }
        if (typed && word(line, from, listener)) {
            return;
        }
        String problem = above
                ? damage(line, from)
                : line.isOverlong() ? overlong(arrivalNanos) : read(line, from, arrivalNanos, listener);
        if (!problem.isEmpty()) {
            garbled++;
            String where = "line " + line.number();
            firstProblem = firstProblem.isEmpty() ? where + ": " + problem : firstProblem;
            listener.garbled(where, problem);
        }
    }

    private static boolean word(Lines line, int from, SourceListener listener) {
        Optional<TypedWord> word =
                line.isOverlong() ? Optional.empty() : TypedWord.parse(Plain.text(line.bytes(), from, line.end()));
        word.ifPresent(listener::typed);
        return word.isPresent();
    }

    /** Says what is wrong with a text that has ended without one reading. */
    void end() throws BadInput {
        if (readings > 0) {
            return;
        }
        long unread = garbled + preamble.titlesUnderTheFirst();
        if (unread == 0) {
            throw new BadInput(name + " holds no readings: " + EXPECTED + ", is what it needs");
        }
        String problem = firstProblem.isEmpty() ? preamble.secondTitle() : firstProblem;
        throw new BadInput(name + " holds no readings, only " + unread + (unread == 1 ? " line" : " lines")
                + " that cannot be read (" + problem + "): " + EXPECTED + ", is what it needs");
    }

    /** What is wrong with a line that is a title, if it is one. */
    private static String damage(Lines line, int from) {
        return line.isOverlong() || TextCheck.controls(line.bytes(), from, line.end()) == 0
                ? ""
                : "holds control characters";
    }

    private String overlong(long arrivalNanos) {
        keepTime(arrivalNanos);
        return "longer than " + Lines.LONGEST + " bytes";
    }

    /** A line without a time of its own that cannot be read has taken its time all the same. */
    private void keepTime(long arrivalNanos) {
        if (reader.isPresent() && reader.get().layout().columns().time().isEmpty()) {
            timing.next(arrivalNanos);
        }
    }

    /** Delivers the reading of a line; gives what is wrong with it, or an empty text. */
    private String read(Lines line, int from, long arrivalNanos, SourceListener listener) throws BadInput {
        if (reader.isEmpty()) {
            String damage = damage(line, from);
            if (!damage.isEmpty()) {
                TextCheck.refuseBinary(line.bytes(), from, line.end(), name);
                return damage;
            }
            Preamble.Outcome outcome = preamble.take(SampleLine.of(line, from));
            if (outcome.layout().isEmpty()) {
                return outcome.problem();
            }
            settle(outcome.layout().get());
        }
        return row(line, from, arrivalNanos, listener);
    }

    private String row(Lines line, int from, long arrivalNanos, SourceListener listener) throws BadInput {
        Reader known = reader.orElseThrow();
        String problem = known.row().read(line.bytes(), from, line.end());
        if (!problem.isEmpty()) {
            if (readings == 0) {
                TextCheck.refuseBinary(line.bytes(), from, line.end(), name);
            }
            keepTime(arrivalNanos);
            return problem;
        }
        return known.layout().columns().time().isPresent()
                ? timed(line, known.row(), listener)
                : deliver(timing.next(arrivalNanos), known.row(), listener);
    }

    private String timed(Lines line, Row row, SourceListener listener) throws BadInput {
        long before = timeline.placedNanos();
        Timeline.Step step = timeline.step(row.nanos());
        boolean stands = readings > 0 && timeline.placedNanos() == before;
        if (row.mayBeDecimalComma() && (stands || row.isWrittenAsFraction())) {
            String text = Excerpt.of(line.bytes(), begin(line), line.end());
            throw new BadInput(name + " line " + line.number() + ": '" + text
                    + "' may be seconds and a reading, or the one number " + row.asOneNumber()
                    + " with a decimal comma: use --decimal-comma for the second, or put the header line"
                    + " 'seconds,value' above the readings for the first");
        }
        return switch (step) {
            case ON -> deliver(timeline.placedNanos(), row, listener);
            case RESTARTED -> {
                listener.link(timeline.placedNanos(), Link.State.RESUMED, new LinkDetail.TimesAgain(line.number()));
                yield deliver(timeline.placedNanos(), row, listener);
            }
            case BACK -> "the time runs back";
            case TOO_FAR -> "the time is out of range";
        };
    }

    private String deliver(long tNanos, Row row, SourceListener listener) {
        readings++;
        listener.reading(new Reading(tNanos, row.value(), row.condition()));
        return "";
    }

    private int begin(Lines line) throws BadInput {
        return line.number() == 1 ? TextCheck.afterMark(line.bytes(), line.start(), line.end(), name) : line.start();
    }

    private static boolean isBlankOrComment(byte[] bytes, int from, int to) {
        int at = from;
        while (at < to && (bytes[at] == ' ' || bytes[at] == '\t' || bytes[at] == '\f')) {
            at++;
        }
        return at == to || bytes[at] == '#';
    }
}

package org.slugpeak.bridge.file;

import java.util.Optional;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.source.TypedWord;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;

/** Turns lines into readings. Knows no file and no clock. One thread at a time. */
final class CsvDecoder {

    private static final String EXPECTED = "one reading a line, 'value' or 'seconds,value'";

    private final String name;
    private final boolean decimalComma;
    private final Timing timing;
    private final Fields fields = new Fields();
    private final Row row;
    private final boolean typed;
    private final Timeline timeline = new Timeline();

    private Optional<Layout> layout = Optional.empty();
    private long readings;
    private long garbled;
    private String firstProblem = "";

    /** A decoder of one text; the timing is for lines without a time of their own. */
    CsvDecoder(String name, boolean decimalComma, Timing timing) {
        this(name, decimalComma, timing, false);
    }

    private CsvDecoder(String name, boolean decimalComma, Timing timing, boolean typed) {
        this.name = name;
        this.decimalComma = decimalComma;
        this.timing = timing;
        this.row = new Row(decimalComma, fields);
        this.typed = typed;
    }

    /** A decoder of values that somebody types, one a line: a first line that is no number is a mistake and no header. */
    static CsvDecoder ofTyped(String name, boolean decimalComma, Timing timing) {
        CsvDecoder decoder = new CsvDecoder(name, decimalComma, timing, true);
        decoder.layout = Optional.of(Layout.ofOneValue(decimalComma));
        return decoder;
    }

    /** What the columns hold, once a line has shown it. */
    Optional<Columns> columns() {
        return layout.map(Layout::columns);
    }

    /** Takes a line that has no reading: header line, comment or blank line; false if it is to be taken as data. */
    boolean header(Lines line) throws BadInput {
        if (line.isOverlong()) {
            return false;
        }
        byte[] bytes = line.bytes();
        int from = begin(line);
        if (isBlankOrComment(bytes, from, line.end())) {
            return true;
        }
        if (layout.isPresent() || TextCheck.controls(bytes, from, line.end()) > 0) {
            return false;
        }
        Layout settled = Layout.of(bytes, from, line.end(), decimalComma, fields, where(line));
        layout = Optional.of(settled);
        return settled.named();
    }

    /** Takes a line. */
    void line(Lines line, long arrivalNanos, SourceListener listener) throws BadInput {
        if (header(line) || (typed && word(line, listener))) {
            return;
        }
        String problem = problem(line, arrivalNanos, listener);
        if (!problem.isEmpty()) {
            garbled++;
            String where = "line " + line.number();
            firstProblem = firstProblem.isEmpty() ? where + ": " + problem : firstProblem;
            listener.garbled(where, problem);
        }
    }

    private boolean word(Lines line, SourceListener listener) {
        if (line.isOverlong()) {
            return false;
        }
        fields.split(line.bytes(), line.start(), line.end(), (byte) '\n');
        Optional<TypedWord> word = TypedWord.parse(fields.text(0));
        word.ifPresent(listener::typed);
        return word.isPresent();
    }

    /** Says what is wrong with a text that has ended without one reading. */
    void end() throws BadInput {
        if (readings > 0) {
            return;
        }
        if (garbled == 0) {
            throw new BadInput(name + " holds no readings: " + EXPECTED + ", is what it needs");
        }
        throw new BadInput(name + " holds no readings, only " + garbled + (garbled == 1 ? " line" : " lines")
                + " that cannot be read (" + firstProblem + "): " + EXPECTED + ", is what it needs");
    }

    /** Delivers the reading of a line; gives what is wrong with it, or an empty text. */
    private String problem(Lines line, long arrivalNanos, SourceListener listener) throws BadInput {
        if (line.isOverlong()) {
            return "longer than " + Lines.LONGEST + " bytes";
        }
        int from = begin(line);
        if (layout.isEmpty()) {
            TextCheck.refuseBinary(line.bytes(), from, line.end(), name);
            return "holds control characters";
        }
        Layout known = layout.get();
        String problem = row.read(line.bytes(), from, line.end(), known);
        if (!problem.isEmpty() && readings == 0) {
            TextCheck.refuseBinary(line.bytes(), from, line.end(), name);
        }
        if (known.columns().time().isPresent()) {
            return problem.isEmpty() ? timed(line, known, listener) : problem;
        }
        long tNanos = timing.next(arrivalNanos);
        return problem.isEmpty() ? deliver(tNanos, listener) : problem;
    }

    private String timed(Lines line, Layout known, SourceListener listener) throws BadInput {
        long before = timeline.placedNanos();
        Timeline.Step step = timeline.step(row.nanos());
        boolean stands = readings > 0 && timeline.placedNanos() == before;
        if (stands && !known.named() && row.mayBeDecimalComma(known)) {
            throw new BadInput(where(line) + ": '" + Excerpt.of(line.bytes(), begin(line), line.end())
                    + "' may be seconds and a reading or one number with a decimal comma: use --decimal-comma,"
                    + " or put the header line 'seconds,value' above the readings");
        }
        return switch (step) {
            case ON -> deliver(timeline.placedNanos(), listener);
            case RESTARTED -> {
                listener.link(
                        timeline.placedNanos(),
                        Link.State.RESUMED,
                        "the time column starts again at line " + line.number());
                yield deliver(timeline.placedNanos(), listener);
            }
            case BACK -> "the time runs back";
            case TOO_FAR -> "the time is out of range";
        };
    }

    private String deliver(long tNanos, SourceListener listener) {
        readings++;
        listener.reading(new Reading(tNanos, row.value(), row.condition()));
        return "";
    }

    private int begin(Lines line) throws BadInput {
        return line.number() == 1 ? TextCheck.afterMark(line.bytes(), line.start(), line.end(), name) : line.start();
    }

    private String where(Lines line) {
        return name + " line " + line.number();
    }

    private static boolean isBlankOrComment(byte[] bytes, int from, int to) {
        int at = from;
        while (at < to && (bytes[at] == ' ' || bytes[at] == '\t' || bytes[at] == '\f')) {
            at++;
        }
        return at == to || bytes[at] == '#';
    }
}

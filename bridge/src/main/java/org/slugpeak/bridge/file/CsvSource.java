package org.slugpeak.bridge.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.source.Understanding;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.Link;

/**
 * Readings from text: a CSV file, or lines on standard input.
 *
 * <p><b>The text.</b> ASCII, UTF-8, UTF-16 or Latin-1, with or without a byte order mark; lines end with LF, CR
 * or both and are no longer than 4096 bytes. Blank lines and lines that begin with {@code #} are skipped. Columns are
 * separated by commas, semicolons, tabs or blanks; fields may stand in double quotes (RFC 4180). The table is found by its
 * rows of numbers ({@link Survey}), in a file among its first {@value #HEAD_LINES} lines; titles above it are passed over.
 *
 * <p><b>The header line</b> is the last line above the table. A column with the name of a time ({@code t}, {@code Zeit},
 * {@code time_ms}, {@code elapsed (us)}, ...), or whose cells are times of day, or that rises steadily, is the time. The reading
 * is the column that is named in volts, or the only other column of numbers; where several may be it, none is taken and the
 * error names them. A unit in the name of the column or behind the numbers becomes the unit of the readings; decibels are
 * turned into what they stand for.
 *
 * <p><b>Decimal commas</b> are found where the lines can be read in no other way; {@link CsvOptions#decimalComma} settles the rest.
 *
 * <p><b>Numbers</b> are decimal, with or without exponent. {@code OL} and its like, and 9.9E37 (SCPI), are readings beyond
 * the range; 9.91E37 (SCPI) is a reading without a value. Every other line is garbled: told to the listener with its number,
 * and never a reading.
 *
 * <p><b>Time.</b> Without a time column the lines of a file come {@value CsvOptions#DEFAULT_READINGS_PER_SECOND} a second, or
 * at the stated rate; those of standard input at the stated rate, or when they arrive, where lines that arrive in one burst
 * are taken 1 ms apart. A line whose time runs back is garbled; a clock that was set back, as by a board that was reset, is
 * told as a link that resumed, and time goes on from where it stood. Settled values, one for each step of a turn
 * ({@link CsvOptions#stepped}), are a second apart unless a rate or a time column says otherwise. Other
 * lines that come as they happen and then cease to come, or do not come within ten seconds, are told as a stale link.
 *
 * <p><b>Typed values.</b> Settled values on standard input have no header line and no second column unless the user names
 * columns, so that a mistake in the first line is told as one; the words of
 * {@link org.slugpeak.bridge.source.TypedWord} may stand in place of a value.
 *
 * <p>One thread at a time; standard input is read by a daemon thread of its own.
 */
public final class CsvSource implements ReadingSource {

    /** What error texts call it. */
    private static final String STANDARD_INPUT = "standard input";

    /** Titles of a logger are never longer. */
    static final int HEAD_LINES = 250;

    private static final int HEAD_BYTES = 1 << 16;

    /** Steps have no clock; what is shown in seconds then shows their number. */
    private static final double STEPS_PER_SECOND = 1;

    private final Optional<String> file;
    private final ByteFeed feed;
    private final CsvDecoder decoder;
    private final Optional<Silence> silence;
    private final Lines lines = new Lines();

    private Optional<Understanding> understanding = Optional.empty();
    private boolean askedInVain;
    private boolean ended;

    private CsvSource(Optional<String> file, ByteFeed feed, CsvDecoder decoder, Optional<Silence> silence) {
        this.file = file;
        this.feed = feed;
        this.decoder = decoder;
        this.silence = silence;
    }

    /**
     * Opens a file and finds out how it is built.
     *
     * @param file with readings
     * @param options what the user says about it
     * @return the source, at its first reading
     * @throws BadInput if the file cannot be opened, or it shows that it is no text with readings, or may be read in two ways
     */
    public static CsvSource open(Path file, CsvOptions options) throws BadInput {
        double usual = options.stepped() ? STEPS_PER_SECOND : CsvOptions.DEFAULT_READINGS_PER_SECOND;
        Timing timing = Timing.even(options.readingsPerSecond().orElse(usual));
        String name = file.toString();
        TextStream in = TextStream.open(stream(file), HEAD_BYTES, name);
        CsvSource source = new CsvSource(
                Optional.of(name), new FileFeed(in.whole()), new CsvDecoder(name, options, timing), Optional.empty());
        try {
            source.survey(in, options, name);
        } catch (BadInput e) {
            source.close();
            throw e;
        }
        return source;
    }

    /**
     * Reads lines as they come. What they hold is found out by the first {@link #poll}, so that nothing waits here.
     *
     * @param in standard input, unbuffered; it is not closed
     * @param options what the user says about it
     * @param ticker tells when lines arrive
     * @return the source
     */
    public static CsvSource standardInput(InputStream in, CsvOptions options, Ticker ticker) {
        return live(Optional.empty(), () -> in, options, ticker);
    }

    /**
     * Reads lines as they come through a named pipe, or whatever else is no plain file. It is opened, as it is read, by the thread
     * that may wait: until somebody writes to a pipe it does not open.
     *
     * @param pipe where lines come
     * @param options what the user says about it
     * @param ticker tells when lines arrive
     * @return the source
     */
    public static CsvSource pipe(Path pipe, CsvOptions options, Ticker ticker) {
        return live(Optional.of(pipe.toString()), () -> Files.newInputStream(pipe), options, ticker);
    }

    private static CsvSource live(Optional<String> file, PumpedFeed.Opener opener, CsvOptions options, Ticker ticker) {
        String name = file.orElse(STANDARD_INPUT);
        OptionalDouble rate = options.readingsPerSecond();
        PumpedFeed feed = new PumpedFeed(() -> NarrowedInput.ofLive(opener.open()), ticker);
        if (options.stepped()) { // whoever types takes the time that it takes
            Timing timing = Timing.even(rate.orElse(STEPS_PER_SECOND));
            return new CsvSource(file, feed, CsvDecoder.ofTyped(name, options, timing), Optional.empty());
        }
        Timing timing = rate.isPresent() ? Timing.even(rate.getAsDouble()) : Timing.arrival();
        Silence silence = new Silence(feed, ticker);
        return new CsvSource(file, feed, new CsvDecoder(name, options, timing), Optional.of(silence));
    }

    private void survey(TextStream in, CsvOptions options, String name) throws BadInput {
        List<SampleLine> head = SampleLine.of(in.head(), in.isShort()).stream()
                .limit(HEAD_LINES)
                .filter(line -> line.bytes().length <= Lines.LONGEST)
                .filter(line -> TextCheck.controls(line.bytes(), 0, line.bytes().length) == 0)
                .toList();
        Optional<NumberTable> table = Survey.table(head, options.decimalComma(), name)
                .filter(found -> found.isCredible() || options.valueColumn().isPresent());
        if (table.isPresent()) {
            Columns columns = new ColumnChoice(table.get(), options, name).columns();
            decoder.settle(TextLayout.of(table.get(), columns));
            understanding = Optional.of(Understood.of(table.get(), columns));
        }
    }

    @Override
    public Optional<Understanding> understanding() {
        return understanding;
    }

    @Override
    public Measurand measurand() {
        askedInVain = columns().isEmpty();
        return columns().map(Columns::measurand).orElse(Measurand.UNKNOWN);
    }

    @Override
    public SourceDescription description() {
        return new SourceDescription.Text(
                file,
                columns().map(it -> Excerpt.of(it.label())).orElse(""),
                columns().map(it -> it.measurand().unit()).orElse(""),
                columns().filter(Columns::fromDecibels).isPresent());
    }

    private Optional<Columns> columns() {
        return decoder.layout().map(TextLayout::columns);
    }

    @Override
    public Progress poll(long waitNanos, SourceListener hears) throws BadInput {
        if (ended) {
            return Progress.ENDED;
        }
        SourceListener listener = silence.map(it -> it.before(hears)).orElse(hears);
        if (drain(listener)) {
            return Progress.MORE;
        }
        int count = fill(waitNanos);
        drain(listener);
        tellLateUnit(hears);
        if (count == ByteFeed.ENDED) {
            ended = true;
            if (lines.last()) {
                decoder.line(lines, feed.arrivalNanos(), listener);
            }
            decoder.end();
            return Progress.ENDED;
        }
        if (count == 0) {
            silence.ifPresent(it -> it.check(hears));
        }
        return count == 0 ? Progress.IDLE : Progress.MORE;
    }

    @Override
    public void close() {
        ended = true;
        try {
            feed.close();
        } catch (IOException e) {
            // What was read is with the listener already; a file that will not close takes nothing from it.
        }
    }

    /** Whoever took down what is measured before a line had told it is told now. */
    private void tellLateUnit(SourceListener hears) {
        String unit = columns().map(it -> it.measurand().unit()).orElse("");
        if (askedInVain && !unit.isEmpty()) {
            askedInVain = false;
            hears.remark(at -> new Link.UnitTold(at, unit));
        }
    }

    private boolean drain(SourceListener listener) throws BadInput {
        boolean some = false;
        while (lines.next()) {
            decoder.line(lines, feed.arrivalNanos(), listener);
            some = true;
        }
        return some;
    }

    private int fill(long waitNanos) throws BadInput {
        try {
            return lines.fill(feed, waitNanos);
        } catch (IOException e) {
            throw new BadInput(
                    "cannot read on in " + file.orElse(STANDARD_INPUT) + " (" + e.getMessage()
                            + "): what came before is kept",
                    e);
        }
    }

    private static InputStream stream(Path file) throws BadInput {
        try {
            if (Files.isDirectory(file)) {
                throw new BadInput(file + " is a folder: give a file with readings");
            }
            return Files.newInputStream(file);
        } catch (NoSuchFileException e) {
            throw new BadInput("there is no file " + file + ": check the name", e);
        } catch (AccessDeniedException e) {
            throw new BadInput(file + " may not be read by you: check its permissions", e);
        } catch (IOException e) {
            throw new BadInput("cannot open " + file + " (" + e.getMessage() + ")", e);
        }
    }
}

package org.slugpeak.bridge.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.reading.Measurand;

/**
 * Readings from text: a CSV file, or lines on standard input.
 *
 * <p><b>The text.</b> ASCII or UTF-8, with or without a byte order mark; lines end with LF, CR or both and are no longer than
 * 4096 bytes. Blank lines and lines that begin with {@code #} are skipped. A line is {@code value} or {@code seconds,value};
 * a tab serves as well as a comma. With {@link CsvOptions#decimalComma} numbers are written {@code 1,25} and columns are
 * separated by semicolons or tabs. Fields may stand in double quotes.
 *
 * <p><b>The header line.</b> A first line that does not begin with a number names the columns. The first column with the name
 * of a time ({@code t}, {@code time}, {@code seconds}, {@code s}, {@code time_ms}, {@code millis}, {@code time (us)}, ...) is
 * the time; the readings are in the column after it, or in the first if the time is elsewhere; other columns are not used. A
 * unit in the name of the column ({@code volts}, {@code level_db}, {@code value (mV)}) becomes the unit of the readings;
 * numbers are not converted.
 *
 * <p><b>Numbers</b> are decimal, with or without exponent. {@code OL} and its like, and 9.9E37 (SCPI), are readings beyond
 * the range; 9.91E37 (SCPI) is a reading without a value. Every other line is garbled: told to the listener with its number,
 * and never a reading.
 *
 * <p><b>Time.</b> Without a time column the lines of a file come {@value CsvOptions#DEFAULT_READINGS_PER_SECOND} a second, or
 * at the stated rate; those of standard input at the stated rate, or when they arrive, where lines that arrive in one burst
 * are taken 1 ms apart. A line whose time runs back is garbled; a clock that was set back, as by a board that was reset, is
 * told as a link that resumed, and time goes on from where it stood. Settled values, one for each step of a turn
 * ({@link CsvOptions#stepped}), are a second apart.
 *
 * <p><b>Typed values.</b> Settled values on standard input have no header line and no second column, so that a mistake in the
 * first line is told as one; the words of {@link org.slugpeak.bridge.source.TypedWord} may stand in place of a value.
 *
 * <p>One thread at a time; standard input is read by a daemon thread of its own.
 */
public final class CsvSource implements ReadingSource {

    /** Steps have no clock; what is shown in seconds then shows their number. */
    private static final double STEPS_PER_SECOND = 1;

    private final String name;
    private final ByteFeed feed;
    private final CsvDecoder decoder;
    private final Lines lines = new Lines();

    private boolean ended;

    private CsvSource(String name, ByteFeed feed, CsvDecoder decoder) {
        this.name = name;
        this.feed = feed;
        this.decoder = decoder;
    }

    /**
     * Opens a file and reads its header line.
     *
     * @param file with readings
     * @param options what the user says about it
     * @return the source, at its first reading
     * @throws BadInput if the file cannot be opened, or its first line shows that it is no text with readings
     */
    public static CsvSource open(Path file, CsvOptions options) throws BadInput {
        double usual = options.stepped() ? STEPS_PER_SECOND : CsvOptions.DEFAULT_READINGS_PER_SECOND;
        double rate = options.readingsPerSecond().orElse(usual);
        String name = file.toString();
        CsvDecoder decoder = new CsvDecoder(name, options.decimalComma(), Timing.even(rate));
        CsvSource source = new CsvSource(name, new FileFeed(stream(file)), decoder);
        try {
            source.readHeader();
        } catch (BadInput e) {
            source.close();
            throw e;
        }
        return source;
    }

    /**
     * Reads lines as they come. The header line, if there is one, is read by the first {@link #poll}, so that nothing waits
     * here.
     *
     * @param in standard input, unbuffered; it is not closed
     * @param options what the user says about it
     * @param ticker tells when lines arrive
     * @return the source
     */
    public static CsvSource standardInput(InputStream in, CsvOptions options, Ticker ticker) {
        String name = "standard input";
        OptionalDouble rate = options.readingsPerSecond();
        boolean comma = options.decimalComma();
        PumpedFeed feed = new PumpedFeed(in, ticker);
        if (options.stepped()) {
            Timing timing = Timing.even(rate.orElse(STEPS_PER_SECOND));
            return new CsvSource(name, feed, CsvDecoder.ofTyped(name, comma, timing));
        }
        Timing timing = rate.isPresent() ? Timing.even(rate.getAsDouble()) : Timing.arrival();
        return new CsvSource(name, feed, new CsvDecoder(name, comma, timing));
    }

    @Override
    public Measurand measurand() {
        return decoder.columns().map(Columns::measurand).orElse(Measurand.UNKNOWN);
    }

    @Override
    public String description() {
        String label = decoder.columns().map(Columns::label).orElse("");
        return label.isEmpty() ? name : name + ", column '" + Excerpt.of(label) + "'";
    }

    @Override
    public Progress poll(long waitNanos, SourceListener listener) throws BadInput {
        if (ended) {
            return Progress.ENDED;
        }
        if (drain(listener)) {
            return Progress.MORE;
        }
        int count = fill(waitNanos);
        drain(listener);
        if (count == ByteFeed.ENDED) {
            ended = true;
            if (lines.last()) {
                decoder.line(lines, feed.arrivalNanos(), listener);
            }
            decoder.end();
            return Progress.ENDED;
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

    private boolean drain(SourceListener listener) throws BadInput {
        boolean some = false;
        while (lines.next()) {
            decoder.line(lines, feed.arrivalNanos(), listener);
            some = true;
        }
        return some;
    }

    private void readHeader() throws BadInput {
        boolean more = true;
        while (more && decoder.columns().isEmpty()) {
            more = fill(0) > 0;
            boolean skip = true;
            while (skip && decoder.columns().isEmpty() && lines.next()) {
                skip = decoder.header(lines);
            }
            if (!skip) {
                lines.unread();
                return;
            }
        }
    }

    private int fill(long waitNanos) throws BadInput {
        try {
            return lines.fill(feed, waitNanos);
        } catch (IOException e) {
            throw new BadInput("cannot read on in " + name + " (" + e.getMessage() + "): what came before is kept", e);
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

package org.slugpeak.bridge.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.Pipe;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.Link;

@Timeout(60)
class StandardInputTest {

    private static final long LONG_NANOS = 30_000_000_000L;

    private final AtomicLong now = new AtomicLong(-5_000_000_000L);
    private final Heard heard = new Heard();

    private OutputStream keyboard;
    private InputStream in;
    private CsvSource source;

    @BeforeEach
    void openPipe() throws IOException {
        Pipe pipe = Pipe.open();
        keyboard = Channels.newOutputStream(pipe.sink());
        in = Channels.newInputStream(pipe.source());
        source = CsvSource.standardInput(in, CsvOptions.defaults(), now::get);
    }

    @AfterEach
    void closePipe() throws IOException {
        source.close();
        keyboard.close();
        in.close();
    }

    @Test
    void doesNotWaitLongerThanItIsAskedTo() throws Exception {
        assertEquals(Progress.IDLE, source.poll(0, heard));
        assertEquals(Progress.IDLE, source.poll(1, heard));
        assertEquals(Progress.IDLE, source.poll(1_000_000, heard));
    }

    @Test
    void canBeDrivenLineByLine() throws Exception {
        for (int i = 0; i < 100; i++) {
            now.addAndGet(20_000_000);
            type(i + "\n");
            while (heard.readings.size() == i) {
                source.poll(LONG_NANOS, heard);
            }
            assertEquals(i + 1, heard.readings.size());
            assertEquals(i * 20_000_000L, heard.readings.get(i).tNanos());
        }
    }

    @Test
    void linesThatCeaseToComeAreStaleAfterFiveIntervalsAndTwoSecondsAndTheNextResumes() throws Exception {
        for (int i = 0; i < 10; i++) {
            now.addAndGet(500_000_000);
            type(i + "\n");
            while (heard.readings.size() == i) {
                source.poll(LONG_NANOS, heard);
            }
        }
        now.addAndGet(2_499_999_999L);
        source.poll(0, heard);
        assertEquals(List.of(), heard.links);
        now.addAndGet(2);
        source.poll(0, heard);
        source.poll(0, heard);
        assertEquals(List.of("stale: silent 2.5"), heard.links, "said once");
        type("10\n");
        while (heard.readings.size() == 10) {
            source.poll(LONG_NANOS, heard);
        }
        assertEquals("resumed: after 2.5", heard.links.get(1));
    }

    @Test
    void aFirstLineThatDoesNotComeIsSaidAfterTenSecondsAndOnlyOnce() throws Exception {
        now.addAndGet(9_999_999_999L);
        source.poll(0, heard);
        assertEquals(List.of(), heard.links, "a program may still be starting");
        now.addAndGet(1);
        source.poll(0, heard);
        now.addAndGet(60_000_000_000L);
        source.poll(0, heard);
        assertEquals(List.of("stale: nothing from PROGRAM 10.0"), heard.links);
        type("1\n");
        pollUntil(1);
        assertEquals("resumed: after 70.0", heard.links.get(1));
    }

    @Test
    void aUnitThatCameTooLateForWhoeverAskedIsTold() throws Exception {
        assertEquals(Measurand.UNKNOWN, source.measurand());
        type("time_ms,mV\n20,1\n");
        pollUntil(1);
        assertEquals(List.of(new Link.UnitTold(0, "mV")), heard.remarks);
        type("40,1\n");
        pollUntil(2);
        assertEquals(1, heard.remarks.size(), "said once");
    }

    @Test
    void aUnitThatNobodyAskedForTooEarlyIsNoNews() throws Exception {
        type("time_ms,mV\n20,1\n");
        pollUntil(1);
        assertEquals(new Measurand("voltage", "mV"), source.measurand());
        type("40,1\n");
        pollUntil(2);
        assertEquals(List.of(), heard.remarks);
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "x-UTF-16LE-BOM"})
    void utf16IsReadAsInAFileAndLineByLine(String charset) throws Exception {
        keyboard.write("seconds,volts\n0.5,1.25\n".getBytes(charset));
        keyboard.flush();
        pollUntil(1);
        assertEquals(Measurand.DC_VOLTS.unit(), source.measurand().unit());
        boolean little = charset.contains("LE");
        keyboard.write("0.75,1.5\n".getBytes(little ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE));
        keyboard.flush();
        pollUntil(2);
        assertEquals(List.of(1.25, 1.5), heard.values());
        assertEquals(List.of(), heard.garbled);
    }

    @Test
    void utf16MayComeByteByByte() throws Exception {
        for (byte each : "\uFEFF1.25\n1.5\n".getBytes(StandardCharsets.UTF_16LE)) {
            keyboard.write(each);
            keyboard.flush();
            source.poll(1_000_000, heard);
        }
        pollUntil(2);
        assertEquals(List.of(1.25, 1.5), heard.values());
    }

    @Test
    void halfALineIsNoReadingYet() throws Exception {
        type("1.2");
        assertEquals(Progress.MORE, source.poll(LONG_NANOS, heard));
        assertEquals(List.of(), heard.values());
        type("5\n");
        assertEquals(Progress.MORE, source.poll(LONG_NANOS, heard));
        assertEquals(List.of(1.25), heard.values());
    }

    @Test
    void linesThatArriveTogetherAreAMillisecondApart() throws Exception {
        type("1\n2\n3\n");
        pollUntil(3);
        assertEquals(List.of(0.0, 0.001, 0.002), heard.seconds());
    }

    @Test
    void timesInTheTextCountMoreThanArrival() throws Exception {
        type("0.5,1\n0.75,2\n");
        pollUntil(2);
        assertEquals(List.of(0.5, 0.75), heard.seconds());
    }

    @Test
    void aStatedRateCountsMoreThanArrival() throws Exception {
        byte[] text = "1\n2\n".getBytes(StandardCharsets.UTF_8);
        CsvOptions options = CsvOptions.defaults().withReadingsPerSecond(10);
        assertEquals(
                List.of(0.0, 0.1),
                Heard.all(CsvSource.standardInput(new ByteArrayInputStream(text), options, now::get))
                        .seconds());
    }

    @Test
    void theHeaderLineIsReadWhenItComes() throws Exception {
        assertEquals(Measurand.UNKNOWN, source.measurand());
        assertEquals(new SourceDescription.Text(Optional.empty(), "", "", false), source.description());
        type("time_ms,mV\n20,1\n");
        pollUntil(1);
        assertEquals(new Measurand("voltage", "mV"), source.measurand());
        assertEquals(new SourceDescription.Text(Optional.empty(), "mV", "mV", false), source.description());
        assertEquals(List.of(0.02), heard.seconds());
    }

    @Test
    void theLastLineNeedsNoLineEnd() throws Exception {
        type("1\n2");
        keyboard.close();
        while (source.poll(LONG_NANOS, heard) != Progress.ENDED) {}
        assertEquals(List.of(1.0, 2.0), heard.values());
        assertEquals(Progress.ENDED, source.poll(LONG_NANOS, heard));
    }

    @Test
    void nothingAtAllIsSaid() throws Exception {
        keyboard.close();
        assertEquals(
                "standard input holds no readings: one reading a line, 'value' or 'seconds,value', is what it needs",
                assertThrows(BadInput.class, () -> source.poll(LONG_NANOS, heard))
                        .getMessage());
    }

    @Test
    void aStreamThatBreaksIsSaidAndCostsNothingBeforeIt() {
        byte[] text = "1\n2\n".getBytes(StandardCharsets.UTF_8);
        CsvSource broken = CsvSource.standardInput(Text.thenBroken(text), CsvOptions.defaults(), now::get);
        BadInput thrown = assertThrows(BadInput.class, () -> {
            while (broken.poll(LONG_NANOS, heard) != Progress.ENDED) {}
        });
        assertEquals(
                "cannot read on in standard input (Input/output error): what came before is kept", thrown.getMessage());
        assertEquals(List.of(1.0, 2.0), heard.values());
    }

    @Test
    void anInterruptEndsTheWaitAndIsPassedOn() throws Exception {
        Thread.currentThread().interrupt();
        assertEquals(Progress.IDLE, source.poll(LONG_NANOS, heard));
        assertEquals(true, Thread.interrupted());
    }

    @Test
    void moreThanAllBuffersHoldComesWhole() throws Exception {
        int rows = 100_000;
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < rows; i++) {
            text.append(i).append('\n');
        }
        Thread writer = new Thread(() -> type(text.toString()));
        writer.start();
        pollUntil(rows);
        writer.join();
        assertEquals(rows, heard.readings.size());
        assertEquals(rows - 1.0, heard.values().get(rows - 1));
        assertEquals(List.of(), heard.garbled);
    }

    private void pollUntil(int readings) throws BadInput {
        while (heard.readings.size() < readings) {
            source.poll(LONG_NANOS, heard);
        }
    }

    private void type(String text) {
        try {
            keyboard.write(text.getBytes(StandardCharsets.UTF_8));
            keyboard.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

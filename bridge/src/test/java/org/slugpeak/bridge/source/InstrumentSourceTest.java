package org.slugpeak.bridge.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.testkit.ManualTicker;
import org.slugpeak.bridge.testkit.ScriptedCarrier;
import org.slugpeak.bridge.testkit.Transcript;

/** What is said of the link, on a clock that is moved by waiting. */
class InstrumentSourceTest {

    private static final long SECOND = TimeUnit.SECONDS.toNanos(1);

    private final ManualTicker ticker = new ManualTicker(-50 * SECOND);
    private final ScriptedCarrier carrier = new ScriptedCarrier(ticker);
    private final Transcript heard = new Transcript();

    @Test
    void aFastSourceThatFallsSilentIsStaleAfterTwoSecondsAndOnlyOnce() throws BridgeException {
        InstrumentSource source = source();
        play(1, 20, SECOND / 50);
        pollFor(source, 10 * SECOND);
        assertEquals("link stale", heard.lines().get(19));
        assertEquals(20, heard.lines().size(), "19 whole lines and one word about the silence");
        assertEquals("silent 2.0", heard.details().get(0));
    }

    @Test
    void aSlowSourceIsStaleAfterFiveOfItsIntervals() throws BridgeException {
        InstrumentSource source = source();
        play(1, 6, 2 * SECOND);
        pollFor(source, 12 * SECOND + 10 * SECOND - 1);
        assertFalse(heard.lines().contains("link stale"));
        pollFor(source, 2);
        assertTrue(heard.lines().contains("link stale"));
        assertEquals("silent 10.0", heard.details().get(0));
    }

    @Test
    void anAutorangingMeterThatPausesMostOfASecondIsNotStale() throws BridgeException {
        InstrumentSource source = source();
        play(1, 10, SECOND / 10);
        carrier.text(SECOND + 8 * SECOND / 10, "5\n");
        pollFor(source, 2 * SECOND);
        assertFalse(heard.lines().contains("link stale"));
    }

    @Test
    void readingsAfterASilenceResume() throws BridgeException {
        InstrumentSource source = source();
        play(1, 20, SECOND / 50);
        carrier.text(5 * SECOND, "7\n");
        pollFor(source, 5 * SECOND + SECOND / 2);
        assertEquals(List.of("link stale", "link resumed", "7.0"), heard.lines().subList(19, 22));
        assertEquals("after 4.6", heard.details().get(1));
    }

    @Test
    void anInstrumentThatNeverSpeaksIsStaleAfterFiveSeconds() throws BridgeException {
        InstrumentSource source = source();
        pollFor(source, 5 * SECOND + 1);
        assertEquals(List.of("link stale"), heard.lines());
        assertEquals(List.of("nothing from METER 5.0"), heard.details());
    }

    @Test
    void garbageIsNoSignOfLife() throws BridgeException {
        InstrumentSource source = source();
        play(1, 20, SECOND / 50);
        for (long i = 1; i <= 300; i++) {
            carrier.bytes(SECOND / 2 + i * SECOND / 100, new byte[] {0, (byte) 0x80, (byte) 0xFF, '\n'});
        }
        pollFor(source, 3 * SECOND);
        assertTrue(heard.lines().contains("link stale"));
        assertEquals(
                19, heard.lines().stream().filter(each -> each.equals("1.0")).count());
    }

    @Test
    void aPulledPlugIsLostAndTheFirstReadingAfterItResumes() throws BridgeException {
        InstrumentSource source = source();
        play(1, 20, SECOND / 50);
        carrier.text(SECOND / 2, "1.2").lost(SECOND / 2 + 1).opened(10 * SECOND).text(11 * SECOND, "345\n6\n");
        pollFor(source, 12 * SECOND);
        assertEquals(
                List.of("link lost", "link resumed", "6.0"),
                heard.lines().subList(19, 22),
                "the halves of two lines are no reading");
        assertEquals("PULLED", heard.details().get(0));
    }

    @Test
    void anInstrumentIsNotAskedWhileItIsAway() throws BridgeException {
        InstrumentSource source = new InstrumentSource(
                carrier, Instruments.create().find("generic-scpi").decoders().create(MeterSetting.DEFAULT), ticker);
        carrier.lost(3 * SECOND / 2);
        assertFalse(source.settle(10 * SECOND));
        assertEquals(List.of("*IDN?\n", "*IDN?\r\n"), carrier.sent());
    }

    @Test
    void whatATerminalMightObeyIsNotShown() throws BridgeException {
        InstrumentSource source = source();
        play(1, 2, SECOND / 50);
        carrier.text(SECOND / 2, "\u009b31m evil\n");
        pollFor(source, SECOND);
        assertEquals("field 1 is no number: '?31m evil'", heard.details().get(0));
    }

    @Test
    void closingClosesTheCarrier() throws BridgeException {
        InstrumentSource source = source();
        source.close();
        assertTrue(carrier.isClosed());
    }

    /** The first of these lines is thrown away: it may be half a line. */
    private void play(int value, int lines, long intervalNanos) {
        for (long i = 1; i <= lines; i++) {
            carrier.text(i * intervalNanos, value + "\n");
        }
    }

    private void pollFor(InstrumentSource source, long nanos) throws BridgeException {
        long endNanos = ticker.nowNanos() + nanos;
        while (endNanos - ticker.nowNanos() > 0) {
            source.poll(endNanos - ticker.nowNanos(), heard);
        }
        source.poll(0, heard);
    }

    private InstrumentSource source() throws BridgeException {
        return new InstrumentSource(carrier, new UnitlessLines(), ticker);
    }

    /** Plain lines whose measurand is settled from the start. */
    private static final class UnitlessLines implements Decoder {

        private final Decoder lines;

        UnitlessLines() throws BadConfiguration {
            lines = Instruments.create().find("generic-line").decoders().create(MeterSetting.DEFAULT);
        }

        @Override
        public void begin(long nowNanos, Outlet out) {
            lines.begin(nowNanos, out);
        }

        @Override
        public void decode(byte[] bytes, int length, long arrivalNanos, Outlet out) {
            lines.decode(bytes, length, arrivalNanos, out);
        }

        @Override
        public boolean settled() {
            return true;
        }

        @Override
        public org.slugpeak.core.reading.Measurand measurand() {
            return lines.measurand();
        }

        @Override
        public String description() {
            return lines.description();
        }
    }
}

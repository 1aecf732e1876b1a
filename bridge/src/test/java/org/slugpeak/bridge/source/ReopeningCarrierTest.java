package org.slugpeak.bridge.source;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.testkit.ManualTicker;

/** The reader's own thread, with ports that follow a script. */
class ReopeningCarrierTest {

    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(30);

    private final List<String> log = new CopyOnWriteArrayList<>();

    @Test
    void bytesArriveWholeAndInOrderThenTheLossThenThePortAgain() throws PortUnavailable {
        Deque<ScriptedPort> ports = new ArrayDeque<>(List.of(new ScriptedPort("abc", "d"), new ScriptedPort("e")));
        try (ReopeningCarrier carrier = ReopeningCarrier.open("port", ports::remove, new ManualTicker(7))) {
            assertInstanceOf(CarrierEvent.Opened.class, next(carrier));
            assertArrayEquals(new byte[] {'a', 'b', 'c'}, bytes(next(carrier)));
            assertArrayEquals(new byte[] {'d'}, bytes(next(carrier)));
            assertInstanceOf(CarrierEvent.Lost.class, next(carrier));
            assertInstanceOf(CarrierEvent.Opened.class, next(carrier));
            assertArrayEquals(new byte[] {'e'}, bytes(next(carrier)));
        }
    }

    @Test
    void aDeviceThatReturnsNothingAtOnceForEverIsGone() throws PortUnavailable {
        Deque<ScriptedPort> ports = new ArrayDeque<>(List.of(new ScriptedPort(true)));
        PortOpener opener = () -> {
            if (ports.isEmpty()) {
                throw new PortUnavailable("not there");
            }
            return ports.remove();
        };
        try (ReopeningCarrier carrier = ReopeningCarrier.open("port", opener, new ManualTicker(0))) {
            assertInstanceOf(CarrierEvent.Opened.class, next(carrier));
            assertInstanceOf(CarrierEvent.Lost.class, next(carrier));
        }
    }

    @Test
    void thePortIsClosedOnceByItsReaderAndNothingIsWrittenAfterwards() throws PortUnavailable {
        ScriptedPort port = new ScriptedPort();
        PortOpener opener = () -> {
            if (log.contains("close")) {
                throw new PortUnavailable("not there");
            }
            return port;
        };
        ReopeningCarrier carrier = ReopeningCarrier.open("port", opener, new ManualTicker(0));
        next(carrier);
        assertInstanceOf(CarrierEvent.Lost.class, next(carrier));
        carrier.send(new byte[] {1});
        carrier.close();
        carrier.close();
        assertEquals(List.of("close"), log);
    }

    @Test
    void aThousandChunksThatNobodyFetchesDoNotHoldUpTheClosing() throws PortUnavailable {
        String[] chunks = new String[10_000];
        java.util.Arrays.fill(chunks, "x");
        ReopeningCarrier carrier = ReopeningCarrier.open("port", () -> new ScriptedPort(chunks), new ManualTicker(0));
        next(carrier);
        carrier.close();
        assertTrue(log.contains("close"));
    }

    private static CarrierEvent next(ReopeningCarrier carrier) {
        return carrier.await(PATIENCE_NANOS).orElseThrow();
    }

    private static byte[] bytes(CarrierEvent event) {
        return assertInstanceOf(CarrierEvent.Bytes.class, event).bytes();
    }

    /** Gives its chunks and is then gone, or returns nothing for ever. */
    private final class ScriptedPort implements OpenPort {

        private final Deque<String> chunks;
        private final boolean deaf;

        ScriptedPort(String... chunks) {
            this.chunks = new ArrayDeque<>(List.of(chunks));
            this.deaf = false;
        }

        ScriptedPort(boolean deaf) {
            this.chunks = new ArrayDeque<>(new ArrayList<>());
            this.deaf = deaf;
        }

        @Override
        public int read(byte[] buffer) {
            if (deaf) {
                return 0;
            }
            if (chunks.isEmpty()) {
                return GONE;
            }
            String chunk = chunks.remove();
            for (int i = 0; i < chunk.length(); i++) {
                buffer[i] = (byte) chunk.charAt(i);
            }
            return chunk.length();
        }

        @Override
        public void write(byte[] bytes) {
            log.add("write");
        }

        @Override
        public void close() {
            log.add("close");
        }
    }
}

package org.slugpeak.bridge.testkit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.FileInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The bench itself must not hang on what it is made to try. */
final class BenchPortTest {

    @TempDir
    private Path folder;

    @Test
    @Timeout(value = 1, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void anInstrumentThatTalksToSomebodyWhoDoesNotListenCanBePulledOut() throws IOException, InterruptedException {
        Talker talker = new Talker();
        try (BenchPort port = BenchPort.in(folder)) {
            port.plug(talker);
            try (FileInputStream deaf = new FileInputStream(port.path())) {
                talker.talking.await();
                assertTrue(deaf.getFD().valid());
                port.unplug();
            }
            assertFalse(Files.exists(Path.of(port.path())));
        }
    }

    /** Says more than any buffer between holds. */
    private static final class Talker implements BenchInstrument {

        private final CountDownLatch talking = new CountDownLatch(1);
        private Consumer<byte[]> toHost = bytes -> {};

        @Override
        public void plugged(Consumer<byte[]> host) {
            toHost = host;
        }

        @Override
        public void opened() {
            talking.countDown();
            toHost.accept(new byte[1_000_000]);
        }
    }
}

package org.slugpeak.cli.faults;

import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.slugpeak.bridge.testkit.BenchInstrument;

/** An instrument that answers whatever it is asked, and speaks unasked, with mutated answers and plain noise. */
final class Babbler implements BenchInstrument {

    private static final byte[] SENSE = "MAKER,MODEL,0,1\r\n0,\"No error\"\r\n+1.25E+00\r\n9.9E37\r\n0.5\n0.75 V\nOL\n"
            .getBytes(StandardCharsets.UTF_8);
    private static final int UNASKED = 5;

    private final SplittableRandom random;
    private Consumer<byte[]> toHost = bytes -> {};

    Babbler(SplittableRandom random) {
        this.random = random;
    }

    @Override
    public synchronized void plugged(Consumer<byte[]> host) {
        toHost = host;
    }

    @Override
    public synchronized void opened() {
        for (int i = random.nextInt(UNASKED); i > 0; i--) {
            babble();
        }
    }

    @Override
    public synchronized void received(byte[] bytes) {
        babble();
    }

    @Override
    public synchronized void unplugged() {
        toHost = bytes -> {};
    }

    private void babble() {
        toHost.accept(Mutation.of(SENSE, random));
    }
}

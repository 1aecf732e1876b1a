package org.slugpeak.bridge.testkit;

import java.util.function.Consumer;

/** How an instrument on a {@link BenchPort} behaves. Called in the port's own thread. */
public interface BenchInstrument {

    /**
     * It was plugged in.
     *
     * @param line sends to the host; any thread may use it while the instrument is plugged in
     */
    void plugged(Consumer<byte[]> line);

    /** The host has opened the port: a board whose reset hangs on the DTR line starts anew. */
    default void opened() {}

    /**
     * The host has sent something.
     *
     * @param bytes as they came
     */
    default void received(byte[] bytes) {}

    /** The plug was pulled: the line must not be used any more. */
    default void unplugged() {}
}

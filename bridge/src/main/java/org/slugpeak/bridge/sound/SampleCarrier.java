package org.slugpeak.bridge.sound;

import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource.Progress;

/** Where audio bytes come from: a file, or a sound input. */
interface SampleCarrier extends AutoCloseable {

    /** The format at present. */
    SampleFormat format();

    /** The file, or the sound input as the system calls it. */
    String name();

    /** How long the file is; empty for a sound input. */
    default OptionalDouble fileSeconds() {
        return OptionalDouble.empty();
    }

    /** One pass, waiting at most the given time for samples to come. */
    Progress poll(long waitNanos, SampleSink sink) throws BridgeException;

    @Override
    void close();

    /** The device's name, by which its calibration is kept; empty for a file. */
    default String device() {
        return "";
    }
}

package org.slugpeak.bridge.sound;

import org.slugpeak.bridge.source.PortUnavailable;

/** An open sound input. One thread reads; any thread may close, which ends a read that waits. */
interface SoundLine extends AutoCloseable {

    SampleFormat format();

    /** Fills the array, waiting as long as it takes; a short count means that the device is gone. */
    int read(byte[] into);

    @Override
    void close();

    /** Opens one and the same device, again and again if need be. */
    interface Device {

        /** Its name; before it was first opened, what the user called it. */
        String name();

        SoundLine open() throws PortUnavailable;
    }
}

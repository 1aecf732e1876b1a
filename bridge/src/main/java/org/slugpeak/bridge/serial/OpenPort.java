package org.slugpeak.bridge.serial;

/** An open serial port. One thread reads; another may write; whoever closes must know that nobody reads. */
interface OpenPort {

    /** What {@link #read} gives when the device has gone. */
    int GONE = -1;

    /**
     * Reads what is there, waiting about a tenth of a second for it.
     *
     * @return how many bytes; 0 where none came; {@link #GONE}
     */
    int read(byte[] buffer);

    /** Writes all, or as many as the device takes before it goes. */
    void write(byte[] bytes);

    void close();
}

package org.slugpeak.bridge.source;

/** An open line to an instrument. One thread reads; another may write; whoever closes must know that nobody reads. */
public interface OpenPort {

    /** What {@link #read} gives when the device has gone. */
    int GONE = -1;

    /**
     * Reads what is there, waiting about a tenth of a second for it.
     *
     * @param buffer takes them
     * @return how many bytes; 0 where none came; {@link #GONE}
     */
    int read(byte[] buffer);

    /**
     * Writes all, or as many as the device takes before it goes.
     *
     * @param bytes as they are
     */
    void write(byte[] bytes);

    /** Lets go of it. */
    void close();
}

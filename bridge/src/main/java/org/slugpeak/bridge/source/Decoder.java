package org.slugpeak.bridge.source;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.slugpeak.core.reading.Measurand;

/**
 * Makes readings of an instrument's bytes, and says what must be sent to it. Stateful; does no input or output, keeps no
 * thread and reads no clock: the same bytes at the same times give the same readings, however the bytes are cut into chunks.
 * One thread at a time.
 */
public interface Decoder {

    /**
     * The link was opened, or opened again: half lines are forgotten, an instrument that must be asked is asked.
     *
     * @param nowNanos the time now
     * @param out takes what must be sent
     */
    void begin(long nowNanos, Outlet out);

    /**
     * Bytes came.
     *
     * @param bytes the chunk; not kept
     * @param length how many of them count
     * @param arrivalNanos when the chunk was complete
     * @param out takes the readings
     */
    void decode(byte[] bytes, int length, long arrivalNanos, Outlet out);

    /**
     * When {@link #due} must be called unless bytes come before.
     *
     * @return a time on the axis of the arrival times; empty where the decoder waits for bytes only
     */
    default OptionalLong dueNanos() {
        return OptionalLong.empty();
    }

    /**
     * The time given by {@link #dueNanos} has come.
     *
     * @param nowNanos the time now
     * @param out takes what must be sent
     */
    default void due(long nowNanos, Outlet out) {}

    /**
     * Whether {@link #measurand} and {@link #description} are known for good.
     *
     * @return false while the instrument must still say who it is
     */
    boolean settled();

    /**
     * What is measured.
     *
     * @return as far as known
     */
    Measurand measurand();

    /**
     * What answers.
     *
     * @return one line, never empty
     */
    String description();

    /**
     * The width of the instrument's scale.
     *
     * @return from one end to the other, in the unit of the {@link #measurand}; empty where it does not say
     */
    default OptionalDouble scaleSpan() {
        return OptionalDouble.empty();
    }

    /**
     * What to send before the link is closed, so that the instrument's own keys work again.
     *
     * @return may be empty
     */
    default byte[] farewell() {
        return new byte[0];
    }
}

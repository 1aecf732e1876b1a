package org.slugpeak.bridge.sound;

import java.time.Instant;

/**
 * What a sound input's full scale is in volts. It holds as long as the input's level control is left alone. A scale or
 * voltage that is not positive is refused with an {@link IllegalArgumentException}. Immutable; any thread may use it.
 *
 * @param device name of the sound input
 * @param channel which channel
 * @param voltsPerFullScale RMS volts of a sine that just fills the scale
 * @param atVolts the known RMS voltage that it was found with
 * @param calibratedAt when
 */
public record SoundCalibration(
        String device, Channel channel, double voltsPerFullScale, double atVolts, Instant calibratedAt) {

    public SoundCalibration {
        if (!(voltsPerFullScale > 0 && atVolts > 0 && voltsPerFullScale < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a calibration needs positive volts, not " + voltsPerFullScale + " from " + atVolts);
        }
    }
}

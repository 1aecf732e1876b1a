package org.slugpeak.bridge.sound;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.slugpeak.core.signal.MeterSettings;

/**
 * What the user may set about audio; an impedance or a scale that is not positive is refused with an
 * {@link IllegalArgumentException}. Immutable; any thread may use it.
 *
 * @param meter which number is the reading, how fast and how often
 * @param channel which channel
 * @param rateHz sample rate to ask of a sound input; empty: 48 kHz, else what it can
 * @param bits bits a sample to ask of a sound input, 16 or 24; empty: 16, else what it can
 * @param ohms voice-coil impedance for milliwatts; empty: volts only
 * @param voltsPerFullScale RMS volts of a full-scale sine, instead of a stored calibration
 * @param everyPurity whether it is told at every look how clean the tone is, for who measures it; else when that has changed
 */
public record SoundOptions(
        MeterSettings meter,
        Channel channel,
        OptionalInt rateHz,
        OptionalInt bits,
        OptionalDouble ohms,
        OptionalDouble voltsPerFullScale,
        boolean everyPurity) {

    public SoundOptions {
        requirePositive("impedance", ohms);
        requirePositive("voltage at full scale", voltsPerFullScale);
    }

    /**
     * The tone in the left channel, every 20 ms.
     *
     * @return the usual options
     */
    public static SoundOptions defaults() {
        return new SoundOptions(
                MeterSettings.defaults(),
                Channel.LEFT,
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false);
    }

    /**
     * The same with another meter.
     *
     * @param newMeter which number, how fast, how often
     * @return a copy
     */
    public SoundOptions withMeter(MeterSettings newMeter) {
        return new SoundOptions(newMeter, channel, rateHz, bits, ohms, voltsPerFullScale, everyPurity);
    }

    /**
     * The same for another channel.
     *
     * @param newChannel which
     * @return a copy
     */
    public SoundOptions withChannel(Channel newChannel) {
        return new SoundOptions(meter, newChannel, rateHz, bits, ohms, voltsPerFullScale, everyPurity);
    }

    /**
     * The same at another sample rate.
     *
     * @param newRateHz hertz
     * @return a copy
     */
    public SoundOptions withRateHz(int newRateHz) {
        return new SoundOptions(meter, channel, OptionalInt.of(newRateHz), bits, ohms, voltsPerFullScale, everyPurity);
    }

    /**
     * The same with another sample size.
     *
     * @param newBits 16 or 24
     * @return a copy
     */
    public SoundOptions withBits(int newBits) {
        return new SoundOptions(meter, channel, rateHz, OptionalInt.of(newBits), ohms, voltsPerFullScale, everyPurity);
    }

    /**
     * The same with a voice coil.
     *
     * @param newOhms positive
     * @return a copy
     */
    public SoundOptions withOhms(double newOhms) {
        return new SoundOptions(
                meter, channel, rateHz, bits, OptionalDouble.of(newOhms), voltsPerFullScale, everyPurity);
    }

    /**
     * The same with a known scale.
     *
     * @param newVolts RMS volts of a full-scale sine; positive
     * @return a copy
     */
    public SoundOptions withVoltsPerFullScale(double newVolts) {
        return new SoundOptions(meter, channel, rateHz, bits, ohms, OptionalDouble.of(newVolts), everyPurity);
    }

    /**
     * The same for who measures how clean the tone is.
     *
     * @return a copy
     */
    public SoundOptions withEveryPurity() {
        return new SoundOptions(meter, channel, rateHz, bits, ohms, voltsPerFullScale, true);
    }

    private static void requirePositive(String what, OptionalDouble value) {
        value.ifPresent(v -> {
            if (!(v > 0 && v < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("the " + what + " must be positive, not " + v);
            }
        });
    }
}

package org.slugpeak.bridge.sound;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.time.Ticker;

/** Opens audio by its address: {@code sound}, {@code sound:NAME} or a file ending in {@code .wav}. Any thread may use it. */
public final class SoundSources {

    private static final String SOUND = "sound";

    private final CalibrationStore calibrations;
    private final Ticker ticker;

    /**
     * Sources that know of the calibrations in a store.
     *
     * @param calibrations what inputs were calibrated to
     * @param ticker elapsed time, for sound inputs
     */
    public SoundSources(CalibrationStore calibrations, Ticker ticker) {
        this.calibrations = calibrations;
        this.ticker = ticker;
    }

    /**
     * Whether an address is one of audio.
     *
     * @param address as given to {@code --from}
     * @return true for {@code sound}, {@code sound:NAME} and {@code *.wav}
     */
    public static boolean handles(String address) {
        return isInput(address) || address.toLowerCase(Locale.ROOT).endsWith(".wav");
    }

    /**
     * Opens a source.
     *
     * @param address one that {@link #handles} says yes to
     * @param options what to measure
     * @return an open source
     * @throws BridgeException if there is no such input or file, or it cannot be used
     */
    public SoundSource open(String address, SoundOptions options) throws BridgeException {
        if (!isInput(address)) {
            double least = options.meter().response().toNanos() / 1e9;
            return new SoundSource(WavCarrier.open(Path.of(address), least), options, options.voltsPerFullScale());
        }
        LineCarrier carrier = LineCarrier.open(new JavaSound(name(address), options), ticker);
        try {
            return new SoundSource(carrier, options, scale(carrier.device(), options));
        } catch (BadConfiguration e) {
            carrier.close();
            throw e;
        }
    }

    private OptionalDouble scale(String device, SoundOptions options) throws BadConfiguration {
        if (options.voltsPerFullScale().isPresent()) {
            return options.voltsPerFullScale();
        }
        Optional<SoundCalibration> known = calibrations.find(device, options.channel());
        return known.isPresent() ? OptionalDouble.of(known.get().voltsPerFullScale()) : OptionalDouble.empty();
    }

    private static boolean isInput(String address) {
        return address.equals(SOUND) || address.startsWith(SOUND + ":");
    }

    private static String name(String address) {
        return address.length() > SOUND.length() ? address.substring(SOUND.length() + 1) : "";
    }
}

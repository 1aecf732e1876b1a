package org.slugpeak.bridge.sound;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.time.Ticker;

/** Opens audio by its address: {@code sound}, {@code sound:NAME} or a file ending in {@code .wav}. Any thread may use it. */
public final class SoundSources {

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
     * Opens a recording.
     *
     * @param file a WAV file
     * @param options what to measure
     * @return an open source
     * @throws BridgeException if there is no such file, or it cannot be used
     */
    public SoundSource openFile(Path file, SoundOptions options) throws BridgeException {
        double least = options.meter().response().toNanos() / 1e9;
        return new SoundSource(WavCarrier.open(file, least), options, options.voltsPerFullScale());
    }

    /**
     * Opens a sound input.
     *
     * @param name of the input; empty for the usual one
     * @param options what to measure
     * @return an open source
     * @throws BridgeException if there is no such input, or it cannot be used
     */
    public SoundSource openInput(String name, SoundOptions options) throws BridgeException {
        LineCarrier carrier = LineCarrier.open(new JavaSound(name, options), ticker);
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
}

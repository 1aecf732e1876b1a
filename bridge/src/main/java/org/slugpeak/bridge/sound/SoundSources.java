package org.slugpeak.bridge.sound;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
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
     * Opens a source.
     *
     * @param address of a WAV file or a sound input
     * @param options what to measure
     * @return an open source
     * @throws BridgeException if there is no such input or file, or it cannot be used
     * @throws IllegalArgumentException if the address is one of neither
     */
    public SoundSource open(SourceAddress address, SoundOptions options) throws BridgeException {
        return switch (address.kind()) {
            case WAV -> openFile(Path.of(address.text()), options);
            case SOUND -> openInput(address.name(), options);
            default -> throw new IllegalArgumentException(address.text() + " is no address of audio");
        };
    }

    private static SoundSource openFile(Path file, SoundOptions options) throws BridgeException {
        double least = options.meter().response().toNanos() / 1e9;
        return new SoundSource(WavCarrier.open(file, least), options, options.voltsPerFullScale());
    }

    private SoundSource openInput(String name, SoundOptions options) throws BridgeException {
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

package org.slugpeak.bridge.instrument;

import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.Decoder;

/** Makes decoders for one described instrument. Immutable; any thread may use it. */
@FunctionalInterface
public interface DecoderFactory {

    /**
     * A new decoder.
     *
     * @param setting what the user wants the meter to be set to
     * @return one that has seen nothing yet
     * @throws BadConfiguration where this instrument cannot be set so
     */
    Decoder create(MeterSetting setting) throws BadConfiguration;
}

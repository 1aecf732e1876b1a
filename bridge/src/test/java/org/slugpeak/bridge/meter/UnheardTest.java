package org.slugpeak.bridge.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.instrument.InstrumentDescription;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.source.BadConfiguration;

/** A meter that was named and is not understood: one line says what to look at, as far as the line it hangs on has it. */
class UnheardTest {

    private final InstrumentDescription board = named("generic-line");

    private static InstrumentDescription named(String name) {
        try {
            return Instruments.create().find(name);
        } catch (BadConfiguration e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void onASerialLineTheOtherUsualSpeedsAreNamed() {
        assertEquals(
                ": no reading from 'generic-line' at 9600 baud: is it switched on, is the cable right, is --baud its"
                        + " speed? (usual beside 9600: 115200, 2400, 19200, 57600, 38400)",
                InstrumentSources.unheard(board, OptionalInt.of(9600), false, Optional.empty()));
    }

    @Test
    void whoGaveASpeedHearsOfNoOther() {
        assertEquals(
                ": no reading from 'generic-line' at 4800 baud; it answers 'x'",
                InstrumentSources.unheard(board, OptionalInt.of(4800), true, Optional.of("it answers 'x'")));
    }

    @Test
    void theNetworkHasNoSpeed() {
        assertEquals(
                ": no reading from 'generic-line': is it switched on, and does it listen there?",
                InstrumentSources.unheard(board, OptionalInt.empty(), false, Optional.empty()));
    }
}

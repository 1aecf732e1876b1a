package org.slugpeak.bridge.instrument;

import java.util.Optional;

/**
 * How an instrument's serial port is set. Immutable; any thread may use it.
 *
 * @param baud bits a second
 * @param dataBits 7 or 8
 * @param parity of each character
 * @param stopBits 1 or 2
 * @param resetOnOpen whether opening may raise the control lines DTR and RTS, which resets many boards and wakes many meters
 * @param dtr how DTR is set after opening; empty leaves it
 * @param rts how RTS is set after opening; empty leaves it
 */
public record LinkSettings(
        int baud,
        int dataBits,
        Parity parity,
        int stopBits,
        boolean resetOnOpen,
        Optional<Boolean> dtr,
        Optional<Boolean> rts) {

    /** Parity of a serial character. */
    public enum Parity {
        /** No parity bit. */
        NONE,
        /** Even. */
        EVEN,
        /** Odd. */
        ODD
    }

    /** What most bench meters are set to when they leave the works. */
    public static final LinkSettings USUAL =
            new LinkSettings(9600, 8, Parity.NONE, 1, true, Optional.empty(), Optional.empty());

    /**
     * The same at another speed.
     *
     * @param otherBaud bits a second
     * @return a copy
     */
    public LinkSettings withBaud(int otherBaud) {
        return new LinkSettings(otherBaud, dataBits, parity, stopBits, resetOnOpen, dtr, rts);
    }

    /**
     * The same with the control lines set as the optical adapters of hand-held meters need them for their supply.
     *
     * @return a copy with DTR on and RTS off
     */
    public LinkSettings feedingAnAdapter() {
        return new LinkSettings(baud, dataBits, parity, stopBits, resetOnOpen, Optional.of(true), Optional.of(false));
    }
}

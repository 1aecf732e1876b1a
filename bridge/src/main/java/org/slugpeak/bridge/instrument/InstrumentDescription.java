package org.slugpeak.bridge.instrument;

/**
 * One instrument as it is described in a TOML file. Immutable; any thread may use it.
 *
 * @param name what the user writes after {@code --meter}
 * @param title one line that says what it is
 * @param hint what to do where it does not send; may be empty
 * @param language what it speaks
 * @param link how its port is set
 * @param decoders makes readings of its bytes
 * @param bounds what a sound one reaches
 */
public record InstrumentDescription(
        String name,
        String title,
        String hint,
        String language,
        LinkSettings link,
        DecoderFactory decoders,
        LinkBounds bounds) {}

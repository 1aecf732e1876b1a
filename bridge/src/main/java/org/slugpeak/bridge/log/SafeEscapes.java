package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.slugpeak.bridge.text.SafeText;

/**
 * JSON lines may be looked at on a terminal: what it would obey is written as {@code \}{@code uXXXX}, which reads back as the same
 * character. Immutable.
 */
final class SafeEscapes extends CharacterEscapes {

    private static final long serialVersionUID = 1L;

    private static final int DELETE = 0x7F;

    @Override
    public int[] getEscapeCodesForAscii() {
        int[] codes = standardAsciiEscapesForJSON();
        codes[DELETE] = ESCAPE_STANDARD;
        return codes;
    }

    @Override
    public @Nullable SerializableString getEscapeSequence(int character) {
        boolean halfAPair = character <= Character.MAX_VALUE && Character.isSurrogate((char) character);
        return halfAPair || SafeText.isSafe(character)
                ? null
                : new SerializedString(String.format(Locale.ROOT, "\\u%04X", character));
    }
}

package org.slugpeak.bridge.line;

import java.util.Optional;
import org.slugpeak.bridge.source.Checksum;

/**
 * How a line carries its checksum. Immutable; any thread may use it.
 *
 * @param kind how it is computed
 * @param mark the digits stand behind its last occurrence, and all before it is summed
 * @param upperCaseOnly whether digits in lower case are a damage
 */
record ChecksumFormat(Checksum kind, String mark, boolean upperCaseOnly) {

    /** What was summed; empty where the checksum is missing or wrong. */
    Optional<String> payload(String line) {
        int at = line.lastIndexOf(mark);
        if (at < 0) {
            return Optional.empty();
        }
        String payload = line.substring(0, at);
        String digits = line.substring(at + mark.length());
        String expected = kind.of(payload);
        boolean right = upperCaseOnly ? digits.equals(expected) : digits.equalsIgnoreCase(expected);
        return right ? Optional.of(payload) : Optional.empty();
    }
}

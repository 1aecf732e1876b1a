package org.slugpeak.bridge.source;

/**
 * Where readings come from, as the user says it after {@code --from}. Every text is one. Immutable; any thread may use it.
 *
 * @param text the whole address as given, without blanks round it
 */
public record SourceAddress(String text) {

    public SourceAddress {
        text = text.strip();
    }

    /**
     * What follows the colon, as in {@code sound:NAME}.
     *
     * @return the name; empty where there is none
     */
    public String name() {
        int colon = text.indexOf(':');
        return colon < 0 ? "" : text.substring(colon + 1);
    }
}

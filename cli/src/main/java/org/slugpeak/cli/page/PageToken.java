package org.slugpeak.cli.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * What stands in the address of the page and cannot be guessed. Immutable; any thread may use it.
 *
 * @param text letters, digits, hyphens and low lines
 */
record PageToken(String text) {

    /** As many as a key of AES has: nobody tries them all, however fast. */
    private static final int BYTES = 16;

    /** A new one for each session: an old address opens nothing. */
    static PageToken fresh() {
        byte[] bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        return new PageToken(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    /** Whether it is this one; how long that takes does not tell how much of it is right. */
    boolean is(String other) {
        return MessageDigest.isEqual(text.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}

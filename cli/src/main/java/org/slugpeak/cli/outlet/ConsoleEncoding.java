package org.slugpeak.cli.outlet;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;

/**
 * In which encoding lines are shown. Everything takes UTF-8 but a console of Windows, which shows bytes by a code page of its own, the
 * one of old for each country; the virtual machine knows it. All methods are pure.
 */
final class ConsoleEncoding {

    private ConsoleEncoding() {}

    /**
     * The encoding of a standard stream.
     *
     * @param system the properties of the virtual machine; Java 17 keeps the code page in {@code sun.stdout.encoding} and its like, where
     *     the stream goes to a console and nowhere else
     * @param stream {@code stdout} or {@code stderr}
     */
    static Charset of(Properties system, String stream) {
        boolean windows =
                system.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
        String page = windows ? system.getProperty("sun." + stream + ".encoding", "") : "";
        return !page.isEmpty() && Charset.isSupported(page) ? Charset.forName(page) : StandardCharsets.UTF_8;
    }
}

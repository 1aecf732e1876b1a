package org.slugpeak.cli.report;

import org.slugpeak.bridge.text.SafeText;

/** Text within HTML and SVG. */
public final class Html {

    private Html() {}

    /** Makes any text harmless: as content and within double quotes. Characters that are obeyed instead of shown become question marks. */
    public static String escape(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(SafeText.isSafe(point) ? point : '?');
            }
        });
        return safe.toString();
    }
}

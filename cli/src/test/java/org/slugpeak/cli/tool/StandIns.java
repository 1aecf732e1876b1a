package org.slugpeak.cli.tool;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** What stands in a test for what a reader of the pages has on the bench: addresses, files, and a clock that runs faster. */
final class StandIns {

    private static final Map<String, String> ALWAYS = new LinkedHashMap<>();

    static {
        ALWAYS.put("(^|\\| )(\\./)?slugpeak ", "$1\"\\$SLUGPEAK\" ");
        ALWAYS.put(" *#.*", "");
        ALWAYS.put("^program ", "printf '0.1\\\\n0.2\\\\n' ");
        ALWAYS.put("^(\"\\$SLUGPEAK\" watch --from -.*)", "printf '0.1\\\\n0.2\\\\n0.15\\\\n' | $1");
        ALWAYS.put(" --speed \\S+", "");
        ALWAYS.put(" demo(?= |$)", " demo --speed 200");
        ALWAYS.put("--from SOURCE", "--from sim:plan");
        ALWAYS.put("(--from sim:\\S+)", "$1 --speed 200");
        ALWAYS.put("--page\\b(?!-)", "--page 0");
        ALWAYS.put("--page-host \\S+", "--page-host 127.0.0.1");
        // A port of this machine at which nothing listens.
        ALWAYS.put("tcp:192\\.168\\.\\S+", "tcp:127.0.0.1:1");
        ALWAYS.put("--from sound\\b", "--from sound:nowhere");
        ALWAYS.put("(align .*--from /.*)", "$1 --chassis transformer --isolated yes --earthed yes --blocking yes");
        ALWAYS.put("align FILE", "align shared/plans/tarnfield-54a.toml");
        ALWAYS.put("align PLAN", "align tarnfield-54a");
        ALWAYS.put("--seed N", "--seed 7");
        ALWAYS.put("\\bFILE\\b", "shared/recordings/if-slug.csv");
        ALWAYS.put("my-meter\\.toml", "shared/instruments/template.toml");
        ALWAYS.put("my-board\\.toml", "shared/generators/template.toml");
    }

    /** The meter of the pages that is asked for nothing special; the others are not there. */
    private static final Pattern METER = Pattern.compile("/dev/ttyUSB0(?! --meter)");

    private final String meterPort;

    /** A bench with a meter. */
    StandIns(String meterPort) {
        this.meterPort = meterPort;
    }

    String put(String command) {
        String line = command;
        for (Map.Entry<String, String> each : ALWAYS.entrySet()) {
            line = line.replaceAll(each.getKey(), each.getValue());
        }
        return METER.matcher(line).replaceAll(meterPort);
    }

    /** Whether the command goes on until somebody leaves. */
    boolean goesOn(String line) {
        return line.contains("--hand keys") || line.contains(" watch --from " + meterPort);
    }

    /** Whether what it needs is not there, so that it must say so in one line. */
    static boolean lacksSomething(String line) {
        return Pattern.compile("sound:nowhere|tcp:127\\.0\\.0\\.1:1|/dev/|take\\.wav")
                .matcher(line)
                .find();
    }
}

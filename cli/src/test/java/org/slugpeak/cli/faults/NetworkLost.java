package org.slugpeak.cli.faults;

import java.nio.file.Path;
import java.util.SplittableRandom;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.bridge.testkit.TcpBench;
import org.slugpeak.cli.tool.PackagedTool;

/** The network goes and comes back, three times in one session: it is said, and readings resume. */
final class NetworkLost implements Trial {

    private static final int TIMES = 3;
    private static final int MOST_READINGS_BETWEEN = 30;

    @Override
    public String name() {
        return "network-lost";
    }

    @Override
    public int count() {
        return 20;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        TcpBench bench = TcpBench.of(ScpiResponder.reading("+1.25000000E+00"));
        int port = bench.port();
        try (PackagedTool tool = PackagedTool.start(folder, "watch", "--from", "tcp:127.0.0.1:" + port, "--json")) {
            for (int i = 0; i < TIMES; i++) {
                for (int more = 1 + random.nextInt(MOST_READINGS_BETWEEN); more > 0; more--) {
                    tool.lineWith("\"type\":\"reading\"");
                }
                bench.close();
                tool.lineWith("\"state\":\"lost\"");
                bench = TcpBench.at(port, ScpiResponder.reading("+1.25000000E+00"));
                tool.lineWith("\"state\":\"resumed\"");
            }
        } finally {
            bench.close();
        }
        return "";
    }
}

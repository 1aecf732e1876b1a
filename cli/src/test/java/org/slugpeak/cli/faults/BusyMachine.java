package org.slugpeak.cli.faults;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.LineAdc;
import org.slugpeak.cli.tool.PackagedTool;

/**
 * Two busy loops beside a board that sends 200 readings a second: how late a reading is shown is told, not judged, since that
 * depends on the machine; that none is lost is judged.
 */
final class BusyMachine implements Trial {

    private static final int READINGS = 1000;
    private static final int PAUSE_MILLIS = 5;

    @Override
    public String name() {
        return "busy-machine";
    }

    @Override
    public int count() {
        return 3;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        List<Process> busy = Stream.of(1, 2).map(each -> loop()).toList();
        LineAdc board = LineAdc.silent();
        try (BenchPort port = BenchPort.in(folder)) {
            port.plug(board);
            try (PackagedTool tool =
                    PackagedTool.start(folder, "watch", "--from", port.path(), "--meter", "generic-line", "--json")) {
                return latency(board, tool);
            }
        } finally {
            busy.forEach(Process::destroyForcibly);
        }
    }

    private static String latency(LineAdc board, PackagedTool tool) throws Exception {
        board.awaitOpened();
        board.play(List.of("0", "0", "0"), 200);
        long[] sent = new long[READINGS + 1];
        Thread talk = new Thread(() -> {
            for (int i = 1; i <= READINGS; i++) {
                sent[i] = System.nanoTime();
                board.play(List.of(Integer.toString(i)), PAUSE_MILLIS);
            }
        });
        talk.start();
        List<Long> late = new ArrayList<>();
        for (int i = 1; i <= READINGS; i++) {
            tool.lineWith("\"value\":" + i + ".0,");
            late.add(System.nanoTime() - sent[i]);
        }
        talk.join();
        late.sort(null);
        return String.format(
                Locale.ROOT,
                "shown after %.1f ms (half), %.1f ms (99 of 100), %.1f ms (all)",
                late.get(READINGS / 2) / 1e6,
                late.get(READINGS * 99 / 100) / 1e6,
                late.get(READINGS - 1) / 1e6);
    }

    private static Process loop() {
        try {
            return new ProcessBuilder("sh", "-c", "while :; do :; done").start();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}

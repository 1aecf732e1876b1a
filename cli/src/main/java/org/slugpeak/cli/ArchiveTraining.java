package org.slugpeak.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Run by the build only, to learn which classes the usual starts load; the class-data archive is made from that list. Its
 * output goes nowhere.
 */
public final class ArchiveTraining {

    private static final int ROWS = 2000;

    private ArchiveTraining() {}

    /**
     * Runs the usual commands once.
     *
     * @param args one folder to write a small file of readings into
     * @throws IOException if that folder cannot be written
     */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        Path readings = Files.writeString(folder.resolve("training.csv"), readings(), StandardCharsets.UTF_8);
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        System.setOut(nowhere);
        System.setErr(nowhere);
        Main.run("--help");
        Main.run("watch", "--help");
        Main.run("watch", "--from", readings.toString(), "--json");
        System.setIn(Files.newInputStream(readings));
        Main.run("watch", "--from", "-", "--json");
        System.setIn(Files.newInputStream(readings));
        Main.run("watch", "--from", "-");
    }

    private static String readings() {
        StringBuilder text = new StringBuilder("seconds,volts\n");
        for (int row = 0; row < ROWS; row++) {
            double x = (row - ROWS / 2) / 300.0;
            text.append(row / 50.0).append(',').append(1 / Math.sqrt(1 + x * x)).append('\n');
        }
        return text.toString();
    }
}

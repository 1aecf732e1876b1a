package org.slugpeak.cli.tool;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** The packaged tool, started as a process the way a user starts it. */
public final class PackagedTool implements AutoCloseable {

    private static final long PATIENCE_SECONDS = 60;

    private final Process process;
    private final Writer input;
    private final BufferedReader output;
    private final CompletableFuture<String> errors;

    private PackagedTool(Process process) {
        this.process = process;
        this.input = new BufferedWriter(new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8));
        this.output = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        this.errors = CompletableFuture.supplyAsync(() -> readAll(process));
        // A tool that says nothing for ever would hang the test instead of failing it.
        CompletableFuture.delayedExecutor(PATIENCE_SECONDS, TimeUnit.SECONDS).execute(process::destroyForcibly);
    }

    /**
     * Starts the tool.
     *
     * @param state a folder that the tool takes for the user's state folder
     * @param args its arguments
     * @return the running process
     */
    public static PackagedTool start(Path state, String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(launcher()));
        command.addAll(List.of(args));
        return start(state, Map.of(), command);
    }

    /**
     * Runs a line of shell in which {@code $SLUGPEAK} is the tool, for what only a shell can arrange.
     *
     * @param folder the line runs in it; also taken for the user's state folder
     * @param environment more variables
     * @param line of POSIX shell
     */
    public static Result shell(Path folder, Map<String, String> environment, String line)
            throws IOException, InterruptedException {
        try (PackagedTool tool = startLine(folder, environment, line)) {
            tool.endInput();
            return tool.finish();
        }
    }

    /** Starts such a line of shell and does not wait for its end. */
    public static PackagedTool startLine(Path folder, Map<String, String> environment, String line) throws IOException {
        Map<String, String> all = new HashMap<>(environment);
        all.put("SLUGPEAK", launcher());
        return start(folder, all, List.of("sh", "-c", "cd \"$XDG_STATE_HOME\"; " + line));
    }

    /** The same, with nothing more in the environment. */
    public static Result shell(Path folder, String line) throws IOException, InterruptedException {
        return shell(folder, Map.of(), line);
    }

    private static PackagedTool start(Path state, Map<String, String> environment, List<String> command)
            throws IOException {
        ProcessBuilder builder = hearingSignals(command.toArray(String[]::new));
        builder.environment().put("XDG_STATE_HOME", state.toString());
        builder.environment().putAll(environment);
        return new PackagedTool(builder.start());
    }

    private static String launcher() {
        return System.getProperty("slugpeak.launcher");
    }

    /** Tests that run in the background of a shell inherit that Ctrl-C is ignored, or HUP by nohup; a user's tool hears them. */
    public static ProcessBuilder hearingSignals(String... command) {
        boolean gnu = System.getProperty("os.name").equals("Linux");
        List<String> all = new ArrayList<>(gnu ? List.of("env", "--default-signal=INT,HUP,TERM") : List.of());
        all.addAll(List.of(command));
        return new ProcessBuilder(all);
    }

    /** Runs the tool to its end with nothing on standard input. */
    public static Result run(Path state, String... args) throws IOException, InterruptedException {
        try (PackagedTool tool = start(state, args)) {
            tool.endInput();
            return tool.finish();
        }
    }

    /** Runs the tool to its end with a text on standard input. */
    public static Result runWithInput(Path state, String text, String... args)
            throws IOException, InterruptedException {
        try (PackagedTool tool = start(state, args)) {
            tool.send(text);
            tool.endInput();
            return tool.finish();
        }
    }

    /** Writes to the tool's standard input, at once. */
    public void send(String text) throws IOException {
        input.write(text);
        input.flush();
    }

    /** Closes the tool's standard input. */
    public void endInput() throws IOException {
        input.close();
    }

    /** The next line that the tool writes; empty at the end. Blocks. */
    public Optional<String> line() throws IOException {
        return Optional.ofNullable(output.readLine());
    }

    /** Reads lines until one contains the text, and gives that one. */
    public String lineWith(String text) throws IOException {
        List<String> seen = new ArrayList<>();
        for (Optional<String> line = line(); line.isPresent(); line = line()) {
            if (line.get().contains(text)) {
                return line.get();
            }
            seen.add(line.get());
        }
        throw new AssertionError("no line with '" + text + "' came; last of " + seen.size() + ": "
                + seen.subList(Math.max(0, seen.size() - 5), seen.size()) + "; errors: " + errors.join());
    }

    /**
     * Sends a signal.
     *
     * @param name without {@code SIG}
     */
    public void signal(String name) throws IOException, InterruptedException {
        new ProcessBuilder("kill", "-" + name, Long.toString(process.pid()))
                .redirectError(ProcessBuilder.Redirect.DISCARD) // what has ended meanwhile needs none
                .start()
                .waitFor();
    }

    /** The process itself. */
    public Process process() {
        return process;
    }

    /** Waits for the end and gives what is left of the output, the errors and the exit code. */
    public Result finish() throws IOException, InterruptedException {
        List<String> lines = new ArrayList<>();
        for (Optional<String> line = line(); line.isPresent(); line = line()) {
            lines.add(line.get());
        }
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            throw new AssertionError("the tool did not end");
        }
        return new Result(process.exitValue(), lines, errors.join());
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    private static String readAll(Process process) {
        try {
            return new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How a run ended. */
    public record Result(int exitCode, List<String> output, String errors) {}
}

package org.slugpeak.cli.tool;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.jline.utils.ScreenTerminal;
import org.slugpeak.bridge.testkit.PseudoTerminal;

/** A window of 80 by 24 with a shell in it that knows jobs: what is typed into it, and what stands on it now. One thread at a time. */
final class Window implements AutoCloseable {

    private static final int COLUMNS = 80;
    private static final int ROWS = 24;
    private static final int LOOK_MILLIS = 50;
    private static final int MOST_LOOKS = 600;

    private final PseudoTerminal line = PseudoTerminal.open();
    private final ScreenTerminal screen = new ScreenTerminal(COLUMNS, ROWS);
    private final CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    private final StringBuilder sent = new StringBuilder();
    private final Process shell;
    private ByteBuffer rest = ByteBuffer.allocate(0);

    Window(Path folder) throws IOException {
        String start = "exec setsid --ctty sh -c 'exec sh -i <\"$W\" >\"$W\" 2>&1' <\"$W\"";
        ProcessBuilder builder = PackagedTool.hearingSignals("sh", "-c", start);
        builder.directory(folder.toFile());
        builder.environment().put("W", line.path());
        builder.environment().put("TERM", "xterm-256color");
        builder.environment().put("LC_ALL", "C.UTF-8");
        builder.environment().put("PS1", "ready> ");
        builder.environment().put("SLUGPEAK", System.getProperty("slugpeak.launcher"));
        builder.environment().put("XDG_STATE_HOME", folder.toString());
        shell = builder.start();
        await("ready>");
        type("stty sane cols " + COLUMNS + " rows " + ROWS + "\n");
        await("ready>");
    }

    void type(String keys) {
        line.write(keys.getBytes(StandardCharsets.UTF_8));
    }

    /** Looks until the text stands on the screen. */
    void await(String text) {
        for (int look = 0; !shown().contains(text); look++) {
            if (look > MOST_LOOKS || !shell.isAlive()) {
                throw new AssertionError("'" + text + "' does not come; there stands\n" + shown());
            }
            take(line.read(LOOK_MILLIS));
        }
    }

    /** Takes what comes within a moment. */
    void look() {
        if (!shell.isAlive()) {
            throw new AssertionError("the window is gone; there stood\n" + shown());
        }
        take(line.read(LOOK_MILLIS));
    }

    private void take(byte[] bytes) {
        ByteBuffer all = ByteBuffer.allocate(rest.remaining() + bytes.length)
                .put(rest)
                .put(bytes)
                .flip();
        CharBuffer characters = CharBuffer.allocate(all.remaining());
        decoder.decode(all, characters, false);
        rest = all;
        String text = characters.flip().toString();
        sent.append(text);
        screen.write(text);
    }

    /** What stands on the screen now. */
    String shown() {
        return screen.toString();
    }

    /** Everything that was ever sent to it. */
    String sent() {
        return sent.toString();
    }

    @Override
    public void close() {
        shell.descendants().forEach(ProcessHandle::destroyForcibly);
        shell.destroyForcibly();
        line.close();
    }
}

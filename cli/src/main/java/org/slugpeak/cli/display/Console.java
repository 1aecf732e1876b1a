package org.slugpeak.cli.display;

import java.io.File;
import java.io.IOError;
import java.io.IOException;
import java.nio.charset.Charset;
import java.util.Optional;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.spi.SystemStream;
import org.jline.terminal.spi.TerminalProvider;
import org.jline.utils.InfoCmp.Capability;
import org.jline.utils.NonBlockingReader;
import org.slugpeak.bridge.disk.PrivateFolder;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.cli.words.ScreenPhrase;

/**
 * The user's terminal: where keys come from and the screen is drawn. Closing it gives the terminal back as it was. Any thread
 * may close it.
 */
public final class Console implements AutoCloseable {

    private static final long KEY_WAIT_MILLIS = 100;

    /** Where the terminal library unpacks its native part; why there is no such place is told to the user. */
    private static final Optional<BadConfiguration> TROUBLE = prepare();

    private final Terminal terminal;
    private final Attributes before;
    private final Keys keys;
    private final Thread reader;
    private final boolean withMouse;
    private volatile Suspension suspension = Suspension.OF_LINES;
    private volatile boolean closed;

    Console(Terminal terminal, KeyBindings bindings, Keys keys) {
        this.terminal = terminal;
        this.keys = keys;
        this.before = terminal.enterRawMode();
        takeControlKeys();
        withMouse = bindings.useMouse();
        trackMouse(true);
        terminal.handle(Terminal.Signal.INT, signal -> keys.put(KeyAction.INTERRUPT));
        NonBlockingReader characters = terminal.reader();
        reader = new Thread(() -> read(characters, bindings), "keys");
        reader.setDaemon(true);
        reader.start();
    }

    /**
     * Ctrl-Z comes as a key, so that the terminal can be given back before the program stops. To quit by signal would print the state of the
     * virtual machine between the records.
     */
    private void takeControlKeys() {
        Attributes raw = terminal.getAttributes();
        raw.setControlChar(Attributes.ControlChar.VSUSP, 0);
        raw.setControlChar(Attributes.ControlChar.VQUIT, 0);
        terminal.setAttributes(raw);
    }

    /** Only where a button is bound; otherwise the mouse goes on marking text, as everywhere. */
    private void trackMouse(boolean on) {
        if (withMouse) {
            terminal.trackMouse(on ? Terminal.MouseTracking.Normal : Terminal.MouseTracking.Off);
            terminal.flush();
        }
    }

    /** What is done before the program stops, and when it goes on. */
    void onSuspending(Runnable giveBack, Runnable takeAgain) {
        suspension = new Suspension(giveBack, takeAgain);
    }

    /** Stops the program and whatever belongs to its job, as the terminal would have done; comes back when it goes on. */
    private void suspend() {
        Attributes raw = terminal.getAttributes();
        suspension.giveBack().run();
        trackMouse(false);
        terminal.setAttributes(before);
        try {
            Suspension.stopJob();
        } catch (IOException noJobs) {
            // A system without jobs: there the key is as unknown as any other.
            terminal.flush();
        }
        terminal.setAttributes(raw);
        trackMouse(true);
        suspension.takeAgain().run();
    }

    /**
     * Whether standard output goes to a terminal.
     *
     * @return false for a pipe or a file, and where it cannot be found out
     */
    public static boolean isOutputTerminal() {
        return isTerminal(SystemStream.Output);
    }

    /**
     * Whether standard input is a keyboard.
     *
     * @return false for a pipe or a file, and where it cannot be found out
     */
    public static boolean isInputTerminal() {
        return isTerminal(SystemStream.Input);
    }

    /**
     * Whether a person can be asked something and can answer.
     *
     * @return true where both standard input and standard output are a terminal
     */
    public static boolean isDialogue() {
        return isInputTerminal() && isOutputTerminal();
    }

    /**
     * Why nothing is known of the terminal.
     *
     * @return one line; empty where there is no trouble
     */
    static Optional<String> trouble() {
        return TROUBLE.map(it -> ScreenPhrase.NO_SCREEN.of(String.valueOf(it.getMessage())));
    }

    private static Optional<BadConfiguration> prepare() {
        try {
            System.setProperty("jline.tmpdir", PrivateFolder.find().toString());
            return Optional.empty();
        } catch (BadConfiguration e) {
            return Optional.of(e);
        }
    }

    private static boolean isTerminal(SystemStream stream) {
        try {
            return TROUBLE.isEmpty() && TerminalProvider.load("jni").isSystemStream(stream);
        } catch (IOException | LinkageError unsupported) {
            return false;
        }
    }

    /**
     * Opens the user's terminal, even where standard input carries readings and standard output goes to a file.
     *
     * @param bindings which key asks for what
     * @param keys where the wishes go
     * @return empty where there is no terminal
     */
    public static Optional<Console> open(KeyBindings bindings, Keys keys) {
        if (TROUBLE.isPresent()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Console(build(), bindings, keys));
        } catch (IOException | IllegalStateException | LinkageError none) {
            return Optional.empty();
        }
    }

    private static Terminal build() throws IOException {
        TerminalBuilder builder = TerminalBuilder.builder()
                .system(true)
                .dumb(false)
                .graphemeCluster(false)
                .nativeSignals(false);
        spoken().ifPresent(builder::encoding);
        boolean apart = !isTerminal(SystemStream.Input) || !isTerminal(SystemStream.Output);
        // Of the providers of terminals only the slower ones can open the controlling terminal beside the standard
        // streams.
        return apart
                ? builder.devTty(new File("/dev/tty").canRead()).build()
                : builder.provider("jni").build();
    }

    /** What the locale says that the terminal understands; a console of Windows knows better than the locale does. */
    private static Optional<Charset> spoken() {
        boolean windows = System.getProperty("os.name").startsWith("Windows");
        return windows
                ? Optional.empty()
                : Optional.ofNullable(System.getProperty("native.encoding")).map(Charset::forName);
    }

    /** Whether the cursor can be sent anywhere, without which there is no screen. */
    boolean canDraw() {
        return terminal.getStringCapability(Capability.cursor_address) != null;
    }

    private void read(NonBlockingReader characters, KeyBindings bindings) {
        KeyDecoder decoder = new KeyDecoder();
        while (!closed) {
            try {
                int character = characters.read(KEY_WAIT_MILLIS);
                if (character == NonBlockingReader.EOF) {
                    throw new IOException("end of keys");
                }
                Optional<String> key = character == NonBlockingReader.READ_EXPIRED
                        ? decoder.pause()
                        : decoder.accept((char) character);
                if (key.equals(Optional.of(KeyDecoder.SUSPEND))) {
                    suspend();
                }
                key.filter(name -> !keys.type(name)).flatMap(bindings::action).ifPresent(keys::put);
            } catch (IOException | IOError | IllegalStateException gone) {
                if (!closed) {
                    keys.put(KeyAction.HANG_UP);
                }
                return;
            }
        }
    }

    Terminal terminal() {
        return terminal;
    }

    /** Rings the terminal's bell. Never fails: where there is no terminal any more nobody can hear it. */
    public void bell() {
        if (!closed) {
            terminal.writer().write('\u0007');
            terminal.writer().flush();
        }
    }

    @Override
    public void close() {
        if (closed) {
            return;
        }
        closed = true;
        try {
            trackMouse(false);
            terminal.setAttributes(before);
            terminal.close();
        } catch (IOException | IOError gone) {
            // The terminal has gone before us: there is nothing left to give back.
            return;
        }
    }
}

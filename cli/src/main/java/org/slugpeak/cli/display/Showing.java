package org.slugpeak.cli.display;

import java.util.Optional;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * What the user sees, whichever way it is shown, and the keys that come back. Records are taken in one thread; the rest may be
 * called from any.
 */
public final class Showing implements RecordSink, AutoCloseable {

    private final RecordSink sink;
    private final Keys keys;
    private final Optional<Console> console;
    private final Optional<Screen> screen;

    private Showing(RecordSink sink, Keys keys, Optional<Console> console, Optional<Screen> screen) {
        this.sink = sink;
        this.keys = keys;
        this.console = console;
        this.screen = screen;
    }

    static Showing onScreen(Console console, Screen screen, Keys keys) {
        return new Showing(screen, keys, Optional.of(console), Optional.of(screen));
    }

    static Showing inLines(RecordSink lines, Optional<Console> console, Keys keys) {
        return new Showing(lines, keys, console, Optional.empty());
    }

    @Override
    public void take(SessionRecord record) {
        sink.take(record);
    }

    /**
     * What the user has asked for by key.
     *
     * @return never the same wish twice
     */
    public Keys keys() {
        return keys;
    }

    /**
     * Shows a few words where there is a screen to show them on.
     *
     * @param words for example the state of the sound
     */
    public void status(String words) {
        screen.ifPresent(it -> it.status(words));
    }

    /** Rings the bell of the terminal, if there is one. */
    public void bell() {
        console.ifPresent(Console::bell);
    }

    /** Whether a screen is drawn, so that nothing else may be written to the terminal. */
    public boolean isScreen() {
        return screen.isPresent();
    }

    /** Gives the terminal back as it was. Safe to call twice. */
    @Override
    public void close() {
        screen.ifPresent(Screen::close);
        console.ifPresent(Console::close);
    }
}

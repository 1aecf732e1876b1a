package org.slugpeak.cli.display;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.cli.words.ScreenPhrase;
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
    private final PrintStream err;
    private final Queue<String> toldOnScreen = new ConcurrentLinkedQueue<>();
    private final TurningSpeed speed = new TurningSpeed();
    private Optional<TerminalLife> life = Optional.empty();
    private List<KeyHint> hints = List.of();
    private Optional<PageAddress> address = Optional.empty();
    private Optional<RecordSink> other = Optional.empty();

    private Showing(RecordSink sink, Keys keys, Optional<Console> console, Optional<Screen> screen, PrintStream err) {
        this.sink = sink;
        this.err = err;
        this.keys = keys;
        this.console = console;
        this.screen = screen;
    }

    static Showing onScreen(Console console, Screen screen, Keys keys, PrintStream err) {
        console.onSuspending(screen::pause, screen::resume);
        return new Showing(screen, keys, Optional.of(console), Optional.of(screen), err);
    }

    static Showing inLines(RecordSink lines, Optional<Console> console, Keys keys, PrintStream err) {
        return new Showing(lines, keys, console, Optional.empty(), err);
    }

    /** The keys that are of use, for who asks. */
    Showing withKeys(List<KeyHint> keysOfUse) {
        hints = List.copyOf(keysOfUse);
        return this;
    }

    /** Tells what every key does: on the screen until it is asked again, or else in lines. */
    public void tellKeys() {
        if (screen.isPresent()) {
            screen.get().toggleKeys();
        } else {
            hints.forEach(hint -> tell(hint.explained()));
        }
    }

    /**
     * There is a page for a browser, too: says so on the screen, which covers what stood in the terminal.
     *
     * @param where its address
     */
    public void hasPage(PageAddress where) {
        address = Optional.of(where);
        screen.ifPresent(it -> it.tell(ScreenPhrase.PAGE_BY_KEY.of(pageKey())));
    }

    private String pageKey() {
        return hints.stream()
                .filter(hint -> hint.action() == KeyAction.PAGE)
                .map(hint -> hint.keys().get(0))
                .findFirst()
                .orElse(KeyAction.PAGE.usualKeys());
    }

    /** Shows where the page for a browser is: on the screen until it is asked again, or else in a line. Nothing where there is none. */
    public void tellAddress() {
        address.ifPresent(where ->
                screen.ifPresentOrElse(it -> it.toggleAddress(where), () -> err.println(SafeText.line(where.url()))));
    }

    /** Lines that end with the terminal they are written to, though no keys are read from it. */
    Showing endingWith(TerminalLife terminal) {
        life = Optional.of(terminal);
        return this;
    }

    /**
     * Shows the same on another display.
     *
     * @param display takes every record right after this, in the same thread; not closed with this
     */
    public void alsoTo(RecordSink display) {
        other = Optional.of(display);
    }

    @Override
    public void take(SessionRecord record) {
        sink.take(record);
        other.ifPresent(it -> it.take(record));
        if (console.isPresent()) {
            speed.see(record).ifPresent(this::tell);
        }
    }

    /**
     * Tells the user something that is no part of the session: on the screen while there is one, and on standard error.
     *
     * @param words one line
     */
    public void tell(String words) {
        if (screen.isPresent()) {
            screen.get().tell(words);
            toldOnScreen.add(words);
        } else {
            err.println(SafeText.line(words));
        }
    }

    /**
     * What the user has asked for by key.
     *
     * @return never the same wish twice
     */
    public Keys keys() {
        if (life.map(TerminalLife::isGone).orElse(false)) {
            life = Optional.empty();
            keys.put(KeyAction.HANG_UP);
        }
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

    /**
     * Shows what is being typed, for a while; nobody needs it afterwards.
     *
     * @param words one line
     */
    public void echo(String words) {
        screen.ifPresent(it -> it.tell(words));
    }

    /** Rings the bell of the terminal, if there is one. */
    public void bell() {
        console.ifPresent(Console::bell);
    }

    /** Whether a person sits at a terminal, whose keys are read. */
    public boolean isAttended() {
        return console.isPresent();
    }

    /**
     * Whether keys may come back, from a terminal or from the other display.
     *
     * @return false where nobody can press any
     */
    public boolean mayAnswer() {
        return isAttended() || other.isPresent();
    }

    /**
     * Whether a screen is drawn, so that nothing else may be written to the terminal.
     *
     * @return false for lines, and for nothing at all
     */
    public boolean isScreen() {
        return screen.isPresent();
    }

    /**
     * Gives the terminal back as it was, and repeats on standard error what was told while the screen was drawn. Safe to call
     * twice.
     */
    @Override
    public void close() {
        screen.ifPresent(Screen::close);
        console.ifPresent(Console::close);
        for (String words = toldOnScreen.poll(); words != null; words = toldOnScreen.poll()) {
            err.println(SafeText.line(words));
        }
    }
}

package org.slugpeak.cli.display;

import java.io.IOError;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jline.terminal.Sized;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.Display;
import org.jline.utils.InfoCmp.Capability;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.moment.Call;
import org.slugpeak.cli.moment.Called;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * The live screen. Records come in one thread and cost next to nothing; a thread of its own looks at most
 * {@value #REDRAWS_PER_SECOND} times a second whether there is something new to see, and sends only the cells that changed.
 */
public final class Screen implements RecordSink, AutoCloseable {

    /** The most redraws a second, whatever the rate of readings. */
    static final int REDRAWS_PER_SECOND = 30;

    private static final long TOLD_NANOS = 10_000_000_000L;

    /** By then it was read (chosen), and what has come of the work meanwhile takes its place. */
    private static final long READ_NANOS = 3_000_000_000L;

    /** Long enough to be seen in the corner of an eye; one at a time is far from the three a second that may harm (WCAG 2.2, 2.3.1). */
    private static final long FLASH_NANOS = 400_000_000L;

    private static final long CLOSING_MILLIS = 1000;

    private final Terminal terminal;
    private final Look look;
    private final Page page;
    private final KeysPage keysPage;
    private final MomentKeeper keeper = new MomentKeeper();
    private final Display display;
    private final Thread painter;
    private final CountDownLatch closed = new CountDownLatch(1);

    private Aside aside = Aside.NONE;
    private final Ticker ticker;
    private long toldUntilNanos;
    private Optional<Moment.Note> notedBefore = Optional.empty();
    private long flashUntilNanos;
    private long calls;
    private volatile boolean paused;
    private Optional<Drawn> drawn = Optional.empty();

    /** What the window shows now. */
    private record Drawn(Moment moment, Aside aside, int width, int height) {

        boolean fills(Sized window) {
            return width == window.getColumns() && height == window.getRows();
        }

        boolean shows(Moment newMoment, Aside newAside) {
            return moment.equals(newMoment) && aside.equals(newAside);
        }
    }

    /**
     * Takes over the terminal and starts to draw.
     *
     * @param console the user's terminal; stays the caller's to close, after this screen
     * @param bindings which key asks for what, for the key map on the screen
     * @param useful the actions that the command sees to
     * @param ascii whether to do without block characters
     */
    public Screen(Console console, KeyBindings bindings, Set<KeyAction> useful, boolean ascii) {
        this(console.terminal(), bindings.hints(useful), ascii, Ticker.system());
        begin();
    }

    Screen(Terminal terminal, List<KeyHint> keys, boolean ascii, Ticker ticker) {
        this.ticker = ticker;
        toldUntilNanos = ticker.nowNanos();
        flashUntilNanos = toldUntilNanos;
        this.terminal = terminal;
        look = Look.of(terminal, System.getenv(), ascii);
        page = new Page(look.symbols(), keys);
        keysPage = new KeysPage(keys);
        display = new Display(terminal, true);
        painter = new Thread(this::paint, "screen");
        painter.setDaemon(true);
    }

    private void begin() {
        enter();
        painter.start();
    }

    private void enter() {
        terminal.puts(Capability.enter_ca_mode);
        terminal.puts(Capability.cursor_invisible);
    }

    private void leave() {
        terminal.puts(Capability.cursor_normal);
        terminal.puts(Capability.exit_ca_mode);
        terminal.flush();
    }

    /** Gives the terminal back for a while. */
    synchronized void pause() {
        paused = true;
        leave();
    }

    /** Takes the terminal over again, and draws all of it. */
    synchronized void resume() {
        enter();
        drawn = Optional.empty();
        paused = false;
    }

    /** Tells of all keys, or of the session again. */
    synchronized void toggleKeys() {
        aside = aside.toggled(keysPage);
    }

    /** Shows where the page for a browser is, or the session again. */
    synchronized void toggleAddress(PageAddress address) {
        aside = aside.toggled(address);
    }

    private void paint() {
        try {
            do {
                redraw();
            } while (!closed.await(1000 / REDRAWS_PER_SECOND + 1, TimeUnit.MILLISECONDS));
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        } catch (IOError gone) {
            // The terminal has gone; the end of its keys tells the session so.
            closed.countDown();
        }
    }

    @Override
    public void take(SessionRecord record) {
        keeper.take(record);
    }

    /**
     * Shows a few words in the top right corner.
     *
     * @param words for example the state of the sound; may be empty
     */
    public synchronized void status(String words) {
        aside = aside.withStatus(words);
    }

    /**
     * Tells the user something for a while, unless an alarm is more urgent or, once it was read, something newer is to be said.
     *
     * @param words one line
     */
    public synchronized void tell(String words) {
        toldUntilNanos = ticker.nowNanos() + TOLD_NANOS;
        notedBefore = keeper.moment().note();
        aside = aside.withTold(words);
    }

    /** Draws what is new; does nothing where nothing is. */
    void redraw() {
        Moment moment = keeper.moment();
        Sized size = terminal.getSize();
        Aside beside = aside(moment);
        boolean visible = size.getColumns() > 0 && size.getRows() > 0;
        if (visible) {
            drawNews(moment, beside, size);
        }
    }

    /** How often somebody who hears nothing was called; what begins says so by itself. */
    private static long calls(Moment moment) {
        return moment.called()
                .filter(it -> it.call() != Call.BEGIN)
                .map(Called::number)
                .orElse(0L);
    }

    private synchronized void drawNews(Moment moment, Aside beside, Sized size) {
        boolean stands =
                drawn.map(it -> it.fills(size) && it.shows(moment, beside)).orElse(false);
        if (!stands && !paused) {
            draw(moment, beside, size);
        }
    }

    private synchronized Aside aside(Moment moment) {
        long nowNanos = ticker.nowNanos();
        boolean noted = moment.note().isPresent() && !moment.note().equals(notedBefore);
        if (nowNanos - toldUntilNanos > (noted ? READ_NANOS - TOLD_NANOS : 0)) {
            aside = aside.withTold("");
        }
        long newCalls = calls(moment);
        if (newCalls > calls) {
            calls = newCalls;
            flashUntilNanos = nowNanos + FLASH_NANOS;
        }
        aside = aside.withFlash(nowNanos - flashUntilNanos < 0);
        return aside;
    }

    private void draw(Moment moment, Aside beside, Sized size) {
        if (!drawn.map(it -> it.fills(size)).orElse(false)) {
            display.resize(size);
            display.clear();
        }
        Grid grid = page.draw(moment, beside, size.getColumns(), size.getRows());
        display.update(lines(grid), 0);
        terminal.flush();
        drawn = Optional.of(new Drawn(moment, beside, grid.width(), grid.height()));
    }

    private List<AttributedString> lines(Grid grid) {
        List<AttributedString> lines = new ArrayList<>(grid.height());
        for (int row = 0; row < grid.height(); row++) {
            AttributedStringBuilder line = new AttributedStringBuilder(grid.width());
            for (int column = 0; column < grid.width(); column++) {
                line.style(look.style(grid.styleAt(row, column))).append(grid.at(row, column));
            }
            lines.add(line.toAttributedString());
        }
        return lines;
    }

    /** Stops drawing and brings back what the terminal showed before. Safe to call twice. */
    @Override
    public void close() {
        if (closed.getCount() == 0) {
            return;
        }
        closed.countDown();
        try {
            painter.join(CLOSING_MILLIS);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
        leave();
    }
}

package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;
import static org.slugpeak.cli.display.Sessions.seconds;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.jline.utils.ScreenTerminal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionRecord;

/** The screen on a terminal that exists in memory only. */
class ScreenTest {

    private static final List<KeyHint> KEYS =
            List.of(new KeyHint(KeyAction.MARK, "space"), new KeyHint(KeyAction.QUIT, "q"));

    private final ScreenTerminal window = new ScreenTerminal(80, 24);
    private final ByteArrayOutputStream sent = new ByteArrayOutputStream();

    private LineDisciplineTerminal terminal;
    private Screen screen;
    private String modes = "";
    private long nowNanos;

    @BeforeEach
    void open() throws IOException {
        OutputStream wire = new OutputStream() {
            @Override
            public void write(int b) {
                sent.write(b);
                unseen.write(b);
            }

            @Override
            public void flush() {
                window.write(unseen.toString(StandardCharsets.UTF_8));
                unseen.reset();
            }

            private final ByteArrayOutputStream unseen = new ByteArrayOutputStream();
        };
        terminal = new LineDisciplineTerminal("test", "xterm-256color", wire, StandardCharsets.UTF_8) {
            @Override
            public void setAttributes(Attributes attributes) {
                modes = attributes.toString();
                super.setAttributes(attributes);
            }
        };
        terminal.setSize(Size.of(80, 24));
        screen = new Screen(terminal, KEYS, false, () -> nowNanos);
        screen.take(Sessions.start(Seek.PEAK));
    }

    /** The words that stand in the window now. */
    private String shown() {
        terminal.flush();
        return window.toString();
    }

    @Test
    void theWindowShowsThePage() {
        screen.take(reading(1, 0.5, 0.5, Trend.RISING));
        screen.status("sound 5");
        screen.redraw();
        assertTrue(shown().contains("100.0 %  0.00 dB below best 0.500 V"), this::shown);
        assertTrue(shown().contains("sound 5"));
        assertTrue(shown().contains("turn slowly, looking for the peak"));
        assertTrue(shown().contains("q quit"));
    }

    @Test
    void whatTheUserIsToldStaysForTenSeconds() {
        screen.tell("no sound output");
        nowNanos = 9_900_000_000L;
        screen.redraw();
        assertTrue(shown().contains("no sound output"));
        nowNanos = 10_100_000_000L;
        screen.redraw();
        assertTrue(!shown().contains("no sound output"));
    }

    @Test
    void whatComesOfTheWorkTakesThePlaceOfWhatWasTold() {
        screen.tell("no sound output");
        screen.take(new CurveWork.PointTaken(1, 454e3, 0.5));
        nowNanos = 2_900_000_000L;
        screen.redraw();
        assertTrue(shown().contains("no sound output"), "nobody has read it yet");
        nowNanos = 3_100_000_000L;
        screen.redraw();
        assertTrue(shown().contains("454.00 kHz reads"), this::shown);
        assertTrue(!shown().contains("no sound output"));
    }

    @Test
    void whatWasSaidBeforeDoesNotTakeThePlaceOfWhatIsTold() {
        screen.take(new CurveWork.PointTaken(1, 454e3, 0.5));
        screen.tell("no sound output");
        nowNanos = 9_900_000_000L;
        screen.redraw();
        assertTrue(shown().contains("no sound output"));
    }

    @Test
    void nothingIsSentWhileNothingChanges() {
        screen.take(reading(1, 0.5, 0.5, Trend.RISING));
        screen.redraw();
        int before = sent.size();
        screen.redraw();
        screen.take(reading(1, 0.5, 0.5, Trend.RISING));
        screen.redraw();
        assertEquals(before, sent.size());
    }

    @Test
    void onlyWhatChangedIsSent() {
        screen.take(reading(1, 0.5, 0.5, Trend.RISING));
        screen.redraw();
        int first = sent.size();
        screen.take(reading(2, 0.501, 0.501, Trend.RISING));
        screen.redraw();
        int second = sent.size() - first;
        assertTrue(second > 0 && second < first / 4, second + " of " + first + " bytes");
        assertTrue(shown().contains("best 0.501 V"));
    }

    @Test
    void aWindowThatChangesItsSizeIsDrawnAnewAndLeavesNothingBehind() {
        screen.take(reading(1, 0.5, 0.5, Trend.RISING));
        screen.redraw();
        for (int[] size : new int[][] {{40, 12}, {200, 60}, {60, 20}, {80, 24}}) {
            window.setSize(Size.of(size[0], size[1]));
            terminal.setSize(Size.of(size[0], size[1]));
            screen.redraw();
            List<String> expected = new Page(Symbols.BLOCKS, KEYS)
                    .draw(sceneShown(), Aside.NONE, size[0], size[1])
                    .lines();
            List<String> lines = shown().lines().map(String::stripTrailing).toList();
            for (int row = 0; row < size[1]; row++) {
                assertEquals(expected.get(row).stripTrailing(), lines.get(row), "row " + row + " of " + size[1]);
            }
        }
    }

    private static Moment sceneShown() {
        MomentKeeper keeper = new MomentKeeper();
        keeper.take(Sessions.start(Seek.PEAK));
        keeper.take(reading(1, 0.5, 0.5, Trend.RISING));
        return keeper.moment();
    }

    @Test
    void aTerminalThatDoesNotKnowItsSizeIsLeftAlone() {
        terminal.setSize(Size.of(0, 0));
        screen.redraw();
        assertEquals(0, sent.size());
    }

    private String sentFor(SessionRecord record) {
        sent.reset();
        screen.take(record);
        screen.redraw();
        return sent.toString(StandardCharsets.UTF_8);
    }

    /** Black on white, which no panel has for long; 256-colour codes as Look has them. */
    private static final String LIT = "48;5;231";

    static List<SessionRecord> whatCalls() {
        return List.of(
                new Passed(seconds(2), 0.5, seconds(1), 0.3),
                new Returned(seconds(2), 0.5, 0),
                new Held(seconds(2), 0.5, 0),
                new Overload(seconds(2), Overload.Cause.CLIPPING, Double.NaN),
                new Link.Changed(seconds(2), Link.State.LOST, LinkDetail.NONE));
    }

    @ParameterizedTest
    @MethodSource("whatCalls")
    void thePanelFlashesOnceForWhoHearsNothing(SessionRecord record) {
        sentFor(reading(1, 0.5, 0.5, Trend.RISING));
        assertTrue(sentFor(record).contains(LIT), "lit when it happens");
        nowNanos += 390_000_000L;
        assertFalse(sentFor(reading(2, 0.5, 0.5, Trend.STEADY)).contains("48;5;"), "and left alone");
        nowNanos += 20_000_000L;
        String after = sentFor(reading(2.1, 0.5, 0.5, Trend.STEADY));
        assertTrue(after.contains("48;5;") && !after.contains(LIT), "until it is over");
    }

    @Test
    void theBeginningOfAnAdjusterDoesNotFlash() {
        sentFor(reading(1, 0.5, 0.5, Trend.RISING));
        SessionRecord begin = new Adjuster(seconds(2), "T1", Adjuster.Action.BEGIN, 0.5, Double.NaN, Double.NaN);
        assertFalse(sentFor(begin).contains(LIT));
    }

    /** More than three flashes a second may do harm (WCAG 2.2, 2.3.1): calls that follow each other make one longer flash. */
    @Test
    void callsThatFollowEachOtherDoNotFlicker() {
        sentFor(reading(1, 0.5, 0.5, Trend.RISING));
        int changes = 0;
        boolean lit = false;
        for (int i = 0; i < 20; i++) {
            nowNanos += 50_000_000L;
            String now = sentFor(new Passed(seconds(2 + i / 20.0), 0.5, seconds(1), 0.3 + i / 10.0));
            changes += now.contains(LIT) && !lit ? 1 : 0;
            lit = lit || now.contains(LIT);
        }
        assertEquals(1, changes, "in a second");
    }

    @Test
    void givenBackItIsLeftAloneAndTakenAgainAllOfItIsDrawn() {
        sentFor(reading(1, 0.5, 0.5, Trend.RISING));
        String whole = shown();
        screen.pause();
        assertEquals("", sentFor(reading(2, 0.6, 0.6, Trend.RISING)), "while it is somebody else's");
        window.write("\u001b[2J\u001b[Hready> something else stands here");
        screen.resume();
        screen.take(reading(3, 0.5, 0.5, Trend.RISING));
        screen.redraw();
        assertEquals(whole, shown());
    }

    @Test
    void closingBringsBackTheCursorAndIsSafeToDoTwice() {
        screen.redraw();
        screen.close();
        int closed = sent.size();
        assertTrue(sent.toString(StandardCharsets.UTF_8).contains("\u001b[?1049l"));
        assertTrue(sent.toString(StandardCharsets.UTF_8).contains("\u001b[?25h")
                || sent.toString(StandardCharsets.UTF_8).contains("\u001b[?12l\u001b[?25h"));
        screen.close();
        assertEquals(closed, sent.size());
    }

    @Test
    void keysArriveInTheOrderTheyWerePressed() throws Exception {
        Keys keys = new Keys();
        Console console = new Console(terminal, KeyBindings.usual(), keys);
        terminal.processInputBytes("n \u001b[5~zq".getBytes(StandardCharsets.UTF_8));
        for (KeyAction action : List.of(KeyAction.NEXT, KeyAction.MARK, KeyAction.AGAIN, KeyAction.QUIT)) {
            assertEquals(Optional.of(action), keys.await(Duration.ofSeconds(20)));
        }
        console.close();
        console.close();
    }

    @Test
    void ctrlCIsAWishToStop() throws Exception {
        Keys keys = new Keys();
        Console console = new Console(terminal, KeyBindings.usual(), keys);
        terminal.raise(Terminal.Signal.INT);
        assertEquals(Optional.of(KeyAction.INTERRUPT), keys.await(Duration.ofSeconds(20)));
        console.close();
    }

    @Test
    void theTerminalGetsItsModesBack() throws Exception {
        String before = terminal.getAttributes().toString();
        Console console = new Console(terminal, KeyBindings.usual(), new Keys());
        assertNotEquals(before, modes, "raw while in use");
        console.close();
        assertEquals(before, modes);
    }
}

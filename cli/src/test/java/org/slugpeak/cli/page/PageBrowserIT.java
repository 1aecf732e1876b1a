package org.slugpeak.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.Sessions;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.TwoPeaks;

/** The page in a real browser: every state, from 320 to 2000 dots wide, a connection that is lost, names that would be markup. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PageBrowserIT {

    private Chromium browser;

    @BeforeAll
    void openBrowser() {
        Assumptions.assumeTrue(
                Chromium.isInstalled(), "the page is NOT LOOKED AT: chromium and chromium-driver are missing");
        browser = new Chromium();
    }

    @AfterAll
    void closeBrowser() {
        if (browser != null) {
            browser.close();
        }
    }

    /** A few seconds of a slug that is turned over its peak. */
    private static Stream<SessionRecord> travel() {
        Stream.Builder<SessionRecord> records = Stream.builder();
        records.add(Sessions.start(Seek.PEAK, "/dev/ttyUSB0"));
        records.add(new Adjuster(0, "T1 top", Adjuster.Action.BEGIN, Double.NaN, Double.NaN, Double.NaN));
        records.add(new Adjuster(0, "T1 top", Adjuster.Action.DONE, 0.2, 0.4, 6.02));
        records.add(new Adjuster(0, "T1 bottom, at the chassis", Adjuster.Action.SKIP, 0.2, 0.2, Double.NaN));
        records.add(new Adjuster(0, "T2 top", Adjuster.Action.BEGIN, Double.NaN, Double.NaN, Double.NaN));
        double best = 0;
        for (int i = 0; i < 500; i++) {
            double value = 0.8 / (1 + Math.pow(i / 100.0 - 3.5, 2));
            best = Math.max(best, value);
            records.add(Sessions.reading(i / 10.0, value, best, value < best ? Trend.FALLING : Trend.RISING));
        }
        return records.build();
    }

    private static SessionRecord record(Act act) {
        long now = Sessions.seconds(50);
        return switch (act) {
            case WAIT, TURN -> Sessions.reading(50, 0.8, 0.8, Trend.RISING);
            case OTHER_WAY -> new Finding.Hinted(now, Hint.WRONG_WAY, 0.5);
            case BACK -> new Passed(now, 0.8, 0, 0.3);
            case STOP -> new Returned(now, 0.79, 0.05);
            case HELD -> new Held(now, 0.79, 0.05);
            case TWO_PEAKS -> new TwoPeaks(now, 0.8, 0.7, 1.2);
            case NO_PEAK -> new NoPeak(now, NoPeakReason.REVERSED);
            case HANDS_OFF -> new Request.HandsOff(now, false);
            case DO -> new Request.Asked(now, CheckKind.LEVEL, 0);
            case OVERLOAD -> new Overload(now, Overload.Cause.CLIPPING, Double.NaN);
            case NO_LINK ->
                new Link.Changed(now, Link.State.LOST, new LinkDetail.Told("the port has gone: put the plug back"));
            case END -> new SessionEnd(now, 500, EndReason.Known.QUIT);
        };
    }

    private static PageBench showing(Act act) throws IOException {
        PageBench bench = PageBench.withKeys();
        if (act != Act.WAIT) {
            travel().forEach(bench.screen::take);
            bench.take(record(act));
        }
        return bench;
    }

    /** Telephones and a tablet, upright and lying, and a large window. */
    private static final List<int[]> SIZES = List.of(
            new int[] {320, 568},
            new int[] {568, 320},
            new int[] {412, 915},
            new int[] {915, 412},
            new int[] {1024, 768},
            new int[] {2000, 1200});

    /** Sign and word lie within their panel, that and the digits within what is seen without scrolling, and nothing is wider than it. */
    private static final String IS_IN_SIGHT = "const box = id => document.getElementById(id).getBoundingClientRect();"
            + "const within = (small, large) => small.left >= large.left - 1 && small.right <= large.right + 1"
            + " && small.top >= large.top - 1 && small.bottom <= large.bottom + 1;"
            + "const seen = {left: 0, top: 0, right: innerWidth, bottom: innerHeight};"
            + "const range = document.createRange(); range.selectNodeContents(document.getElementById('word'));"
            + "return within(range.getBoundingClientRect(), box('panel')) && within(box('sign'), box('panel'))"
            + " && within(box('panel'), seen) && within(box('digits'), seen)"
            + " && document.documentElement.scrollWidth <= innerWidth";

    @ParameterizedTest
    @EnumSource(Act.class)
    void everyActHasItsWordItsSignAndContrastAtEverySize(Act act) throws IOException {
        try (PageBench bench = showing(act)) {
            browser.sized(412, 915).open(bench.url());
            browser.awaitTrue("document.getElementById('panel').dataset.act === '" + act + "'");
            assertEquals("#" + act, browser.run("return document.querySelector('#sign use').getAttribute('href')"));
            assertEquals("", browser.violations());
            for (int[] size : SIZES) {
                browser.sized(size[0], size[1]).settle();
                String name = act + "-" + size[0] + "x" + size[1];
                keep(name);
                assertEquals(true, browser.run(IS_IN_SIGHT), name);
            }
        }
    }

    /** Pictures to be looked at by a person, where a folder is named for them. */
    private void keep(String name) throws IOException {
        String folder = System.getProperty("page.pictures", "");
        if (!folder.isEmpty()) {
            browser.picture(Path.of(folder, name + ".png"));
        }
    }

    @Test
    void theCheckerOfContrastSeesWhatIsTooDim() throws IOException {
        try (PageBench bench = showing(Act.TURN)) {
            browser.sized(412, 915).open(bench.url());
            browser.awaitText("word", "TURN");
            browser.run("document.getElementById('line').style.color = '#777'");
            assertTrue(browser.violations().contains("color-contrast-enhanced #line"), browser.violations());
        }
    }

    @Test
    void aNameThatWouldBeMarkupIsText() throws IOException {
        String name = "<img src=x onerror=\"document.title='caught'\"><script>document.title='caught'</script>&amp;";
        try (PageBench bench = PageBench.withKeys()) {
            browser.sized(412, 915).open(bench.url());
            travel().forEach(bench.screen::take);
            bench.take(
                    Sessions.start(Seek.PEAK, name),
                    new Adjuster(0, name, Adjuster.Action.DONE, 0.2, 0.4, 6.02),
                    new Adjuster(0, name, Adjuster.Action.BEGIN, Double.NaN, Double.NaN, Double.NaN),
                    new Link.Changed(Sessions.seconds(51), Link.State.LOST, new LinkDetail.Told(name)));
            browser.awaitText("title", name);
            browser.awaitText("source", name);
            browser.awaitTrue(
                    "document.querySelector('td').textContent === document.getElementById('title').textContent");
            browser.awaitTrue("document.getElementById('alarm').textContent.includes('<script>')");
            assertEquals(0L, browser.run("return document.querySelectorAll('img').length"));
            assertEquals(1L, browser.run("return document.querySelectorAll('script').length"));
            assertEquals(true, browser.run("return document.title !== 'caught'"));
        }
    }

    /** What a fault in the page itself could do: the policy that is sent along stops it. */
    @Test
    void evenMarkupThatGotIntoThePageDoesNotRun() throws IOException {
        try (PageBench bench = showing(Act.TURN)) {
            browser.open(bench.url());
            browser.awaitText("word", "TURN");
            assertEquals(
                    "TypeError",
                    browser.run(
                            "try { document.body.innerHTML += '<b>'; return 'taken'; } catch (e) { return e.name; }"));
            browser.run(
                    "try { const it = document.createElement('button'); it.setAttribute('onclick', \"document.title = 'caught'\");"
                            + "document.body.append(it); it.click(); } catch (refused) { return 'refused'; }");
            assertEquals(true, browser.run("return document.title !== 'caught'"));
        }
    }

    @Test
    void aConnectionThatIsLostIsSaidInLargeLettersAndComesBackByItself() throws IOException {
        PageBench bench = showing(Act.STOP);
        browser.sized(412, 915).open(bench.url());
        browser.awaitText("word", "STOP");
        bench.screen.breakOff();
        browser.awaitTrue("!document.getElementById('lost').hidden");
        keep("LOST-412x915");
        assertEquals(
                true,
                browser.run("return parseFloat(getComputedStyle(document.querySelector('.large')).fontSize) > 40"));
        assertEquals(true, browser.run("return document.documentElement.scrollWidth <= innerWidth"));
        assertEquals(false, browser.run("return document.getElementById('digits').checkVisibility()"));
        assertEquals("", browser.violations());
        try (PageBench back = bench.again()) {
            travel().forEach(back.screen::take);
            back.take(record(Act.HELD));
            browser.awaitText("word", "HELD");
            assertEquals(true, browser.run("return document.getElementById('lost').hidden"));
        }
    }

    @Test
    void theEndIsNoLostConnection() throws IOException {
        try (PageBench bench = showing(Act.TURN)) {
            browser.open(bench.url());
            browser.awaitText("word", "TURN");
            bench.take(record(Act.END));
        }
        browser.awaitText("word", "END");
        browser.awaitTrue("!document.getElementById('over').hidden");
    }

    @Test
    void aButtonIsAKeyAndWithoutThePermissionThereIsNone() throws IOException {
        try (PageBench bench = showing(Act.TURN)) {
            browser.open(bench.url());
            browser.awaitText("word", "TURN");
            browser.click("button[data-key=mark]");
            browser.awaitTrue("document.querySelector('button[data-key=mark].sent')");
            browser.click("button[data-key=next]");
            browser.awaitTrue("document.querySelector('button[data-key=next].sent')");
            assertEquals(Optional.of(KeyAction.MARK), bench.showing.keys().poll());
            assertEquals(Optional.of(KeyAction.NEXT), bench.showing.keys().poll());
        }
        try (PageBench bench = PageBench.toLookAt()) {
            browser.open(bench.url());
            browser.awaitTrue("document.getElementById('word').textContent === 'WAIT'");
            assertEquals(0L, browser.run("return document.querySelectorAll('button').length"));
        }
    }

    @Test
    void twoBrowsersSeeTheSame() throws IOException {
        try (PageBench bench = showing(Act.TURN);
                Chromium other = new Chromium()) {
            browser.open(bench.url());
            other.open(bench.url());
            browser.awaitText("word", "TURN");
            other.awaitText("word", "TURN");
            bench.take(record(Act.BACK));
            browser.awaitText("word", "BACK 0.0");
            other.awaitText("word", "BACK 0.0");
        }
    }

    @Test
    void aCurveIsDrawnWhileItIsMeasured() throws IOException {
        try (PageBench bench = PageBench.toLookAt()) {
            bench.take(Sessions.start(Seek.PEAK, "sim:aligned"));
            for (int i = 0; i < 30; i++) {
                double hz = 440e3 + 1e3 * i;
                long now = Sessions.seconds(i);
                double level = 0.8 / (1 + Math.pow(i / 6.0 - 2.5, 2));
                bench.take(
                        new Request.SetGenerator(now, hz, i + 1, 31, true, Optional.empty()),
                        Sessions.reading(i, level, 0.8, Trend.STEADY).uncompared(),
                        new CurveWork.PointTaken(now, hz, level));
            }
            bench.take(new Request.SetGenerator(Sessions.seconds(30), 470e3, 31, 31, true, Optional.empty()));
            browser.sized(412, 915).open(bench.url());
            browser.awaitText("word", "470 kHz");
            assertEquals("31 of 31", browser.text("title"));
            assertEquals(
                    30L,
                    browser.run(
                            "return document.querySelector('#curve .trace').getAttribute('d').split(/[ML]/).length - 1"));
            browser.settle();
            keep("CURVE-412x915");
            browser.sized(915, 412).settle();
            keep("CURVE-915x412");
            assertEquals("", browser.violations());
        }
    }

    /** The goal of the page: a tenth of a second from a record to the dots on the screen, of which the last wait for the next picture. */
    @Test
    void aRecordIsOnTheScreenWithinATenthOfASecond() throws IOException {
        int tries = 40;
        try (PageBench bench = showing(Act.TURN)) {
            browser.sized(412, 915).open(bench.url());
            browser.awaitText("word", "TURN");
            browser.run(
                    "window.seen = {}; new MutationObserver(() => { const name = document.getElementById('title').textContent;"
                            + " requestAnimationFrame(() => setTimeout(() => { window.seen[name] = Date.now(); })); })"
                            + ".observe(document.getElementById('title'), {childList: true, characterData: true, subtree: true})");
            long[] sentMillis = new long[tries];
            for (int i = 0; i < tries; i++) {
                sentMillis[i] = System.currentTimeMillis();
                bench.take(new Adjuster(0, "n" + i, Adjuster.Action.BEGIN, Double.NaN, Double.NaN, Double.NaN));
                browser.awaitTrue("'n" + i + "' in window.seen");
            }
            long[] delaysMillis = IntStream.range(0, tries)
                    .mapToLong(i -> (Long) browser.run("return window.seen['n" + i + "']") - sentMillis[i])
                    .sorted()
                    .toArray();
            System.out.println("record to picture, ms: median " + delaysMillis[tries / 2] + ", 90 % "
                    + delaysMillis[tries * 9 / 10] + ", longest " + delaysMillis[tries - 1]);
            assertTrue(delaysMillis[tries / 2] < 100, "median " + delaysMillis[tries / 2] + " ms");
        }
    }
}

package org.slugpeak.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.slugpeak.cli.cue.Overheard;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.page.PageState.Spot;

/** Many look on, and nobody is waited for. */
class ScreensTest {

    private static final int PATIENCE_SECONDS = 30;

    private final AtomicLong nowNanos = new AtomicLong();
    private final Told told = new Told(new MomentKeeper().moment(), new Overheard().tone());
    private final Screens screens = new Screens(sight(0), () -> "", nowNanos::get);

    @AfterEach
    void close() {
        screens.close();
    }

    private PageState sight(long number) {
        return new PageState(number, told, Spot.NONE, WorkDone.NONE);
    }

    /** A browser that takes what it is sent, or, until it is let go on, nothing. */
    private static final class Browser extends OutputStream {

        private final StringBuilder text = new StringBuilder();
        private final CountDownLatch goOn;
        private final CountDownLatch began = new CountDownLatch(1);
        private final CountDownLatch ended = new CountDownLatch(1);

        Browser(boolean slow) {
            goOn = new CountDownLatch(slow ? 1 : 0);
        }

        @Override
        public void write(int one) {
            throw new IllegalStateException("one byte");
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            began.countDown();
            try {
                goOn.await();
            } catch (InterruptedException e) {
                throw new IOException(e);
            }
            synchronized (this) {
                text.append(new String(bytes, from, length, StandardCharsets.UTF_8));
                notifyAll();
            }
        }

        @Override
        public void close() {
            ended.countDown();
        }

        synchronized void awaitNumber(long number) throws InterruptedException {
            long leftMillis = TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS);
            while (text.indexOf("\"n\":" + number + ",") < 0 && leftMillis > 0) {
                wait(100);
                leftMillis -= 100;
            }
            assertTrue(text.indexOf("\"n\":" + number + ",") >= 0, number + " did not come");
        }

        synchronized int states() {
            return text.toString().split("event: state", -1).length - 1;
        }
    }

    private Browser join(boolean slow) {
        Browser browser = new Browser(slow);
        assertTrue(screens.join(browser));
        return browser;
    }

    @Test
    void eightSeeTheSameAndTheNewestWhileOneOfThemTakesNothing() throws Exception {
        List<Browser> browsers = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            browsers.add(join(false));
        }
        Browser slow = join(true);
        assertTrue(slow.began.await(PATIENCE_SECONDS, TimeUnit.SECONDS));
        for (long number = 1; number <= 100_000; number++) {
            screens.show(sight(number));
        }
        for (Browser browser : browsers) {
            browser.awaitNumber(100_000);
        }
        assertEquals(0, slow.states());
        slow.goOn.countDown();
        slow.awaitNumber(100_000);
        assertTrue(slow.states() <= 2, "the slow one was sent " + slow.states() + " old states");
    }

    @Test
    void whoTakesNothingForTooLongIsLetGoAndNobodyElse() throws Exception {
        Browser quick = join(false);
        Browser slow = join(true);
        assertTrue(slow.began.await(PATIENCE_SECONDS, TimeUnit.SECONDS));
        nowNanos.addAndGet(TimeUnit.SECONDS.toNanos(Screens.PATIENCE_SECONDS) - 1);
        screens.dropStuck();
        assertEquals(1, slow.ended.getCount());
        nowNanos.addAndGet(2);
        screens.dropStuck();
        assertTrue(slow.ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS));
        screens.show(sight(1));
        quick.awaitNumber(1);
    }

    @Test
    void oneMoreThanThereMayBeIsNotTaken() {
        for (int i = 0; i < Screens.MOST; i++) {
            join(true);
        }
        assertFalse(screens.join(new Browser(false)));
    }

    @Test
    void theLastStateIsSentBeforeTheEnd() throws Exception {
        Browser browser = join(false);
        browser.awaitNumber(0);
        screens.show(sight(1));
        screens.close();
        assertTrue(browser.ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS));
        browser.awaitNumber(1);
    }
}

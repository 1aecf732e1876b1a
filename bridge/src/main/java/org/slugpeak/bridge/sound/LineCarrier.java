package org.slugpeak.bridge.sound;

import java.util.Locale;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;

/**
 * A sound input, opened again by itself when it went away: {@code lost} when a read comes back short or nothing has come for
 * a second and a half, {@code resumed} with the first samples after.
 *
 * <p>One thread at a time, the caller's; the reading thread is hidden.
 */
final class LineCarrier implements SampleCarrier {

    private static final long SILENT_NANOS = 1_500_000_000L;
    private static final long FIRST_RETRY_NANOS = 200_000_000L;
    private static final long LONGEST_RETRY_NANOS = 2_000_000_000L;

    private final SoundLine.Device device;
    private final Ticker ticker;
    private SampleFormat format;
    private @Nullable LineReader reader;
    private @Nullable CaptureClock clock;
    private boolean lost;
    private long heardNanos;
    private long retryAtNanos;
    private long retryNanos = FIRST_RETRY_NANOS;
    private long overruns;

    private LineCarrier(SoundLine.Device device, SoundLine line, Ticker ticker) {
        this.device = device;
        this.ticker = ticker;
        this.format = line.format();
        startReading(line);
    }

    static LineCarrier open(SoundLine.Device device, Ticker ticker) throws PortUnavailable {
        return new LineCarrier(device, device.open(), ticker);
    }

    @Override
    public String device() {
        return device.name();
    }

    /** How often samples were lost. */
    long overruns() {
        return overruns;
    }

    @Override
    public SampleFormat format() {
        return format;
    }

    @Override
    public String name() {
        return device.name();
    }

    @Override
    public Progress poll(long waitNanos, SampleSink sink) {
        LineReader present = reader;
        if (present == null) {
            retry(waitNanos, sink);
            return Progress.IDLE;
        }
        LineReader.Block block = present.next(waitNanos);
        if (block == null) {
            if (ticker.nowNanos() - heardNanos > SILENT_NANOS) {
                lose(sink, LinkDetail.Cause.SOUND_SILENT);
            }
            return Progress.IDLE;
        }
        if (block.length() == 0) {
            lose(sink, LinkDetail.Cause.SOUND_GONE);
            return Progress.IDLE;
        }
        deliver(block, sink);
        present.done(block);
        return Progress.MORE;
    }

    @Override
    public void close() {
        if (reader != null) {
            reader.close();
            reader = null;
        }
    }

    private void deliver(LineReader.Block block, SampleSink sink) {
        heardNanos = block.arrivedNanos();
        int frames = block.length() / format.frameBytes();
        CaptureClock present = clock;
        if (present == null) {
            long originNanos = block.arrivedNanos() - Math.round(format.seconds(frames) * 1e9);
            present = new CaptureClock(format.rateHz(), originNanos);
            clock = present;
            if (lost) {
                lost = false;
                retryNanos = FIRST_RETRY_NANOS;
                sink.link(originNanos, Link.State.RESUMED, new LinkDetail.Told(device.name()));
            }
            sink.begin(format, originNanos);
        }
        if (present.arrived(frames, block.arrivedNanos())) {
            tellClock(present, sink);
        }
        sink.samples(block.bytes(), block.length());
    }

    private void tellClock(CaptureClock present, SampleSink sink) {
        sink.shift(present.shiftNanos());
        if (present.lostNanos() > 0) {
            overruns++;
            sink.garbled(
                    device.name(),
                    String.format(
                            Locale.ROOT,
                            "%.0f ms of sound were lost (%d so far): the computer is too busy",
                            present.lostNanos() / 1e6,
                            overruns));
        }
    }

    private void lose(SampleSink sink, LinkDetail detail) {
        if (!lost) {
            lost = true;
            sink.link(ticker.nowNanos(), Link.State.LOST, detail);
        }
        close();
        clock = null;
        retryAtNanos = ticker.nowNanos() + retryNanos;
    }

    private void retry(long waitNanos, SampleSink sink) {
        long untilRetry = retryAtNanos - ticker.nowNanos();
        if (untilRetry > 0) {
            pause(Math.min(waitNanos, untilRetry));
            return;
        }
        retryNanos = Math.min(2 * retryNanos, LONGEST_RETRY_NANOS);
        try {
            SoundLine line = device.open();
            format = line.format();
            startReading(line);
        } catch (PortUnavailable e) {
            lose(sink, new LinkDetail.Told(String.valueOf(e.getMessage())));
        }
    }

    private void startReading(SoundLine line) {
        heardNanos = ticker.nowNanos();
        LineReader next = new LineReader(line, ticker);
        reader = next;
        next.start();
    }

    private static void pause(long nanos) {
        if (nanos > 0) {
            LockSupport.parkNanos(nanos);
        }
    }
}

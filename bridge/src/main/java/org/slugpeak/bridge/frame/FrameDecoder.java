package org.slugpeak.bridge.frame;

import java.util.Arrays;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.FrameSplitter;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;

/** Readings of a meter that sends frames. One thread at a time. */
final class FrameDecoder implements Decoder {

    /** The second of two copies comes at once: a frame takes 46 ms at 2400 baud, and a new value a quarter of a second. */
    private static final long COPY_WITHIN_NANOS = TimeUnit.MILLISECONDS.toNanos(150);

    private final FrameFormat format;
    private final MeterSetting setting;
    private final FrameReader reader;
    private final FrameSplitter splitter;
    private byte[] last = new byte[0];
    private long lastNanos;
    private boolean settled;
    private boolean batterySaid;
    private OptionalLong dueNanos = OptionalLong.empty();

    FrameDecoder(FrameFormat format, MeterSetting setting) {
        this.format = format;
        this.setting = setting;
        this.reader = new FrameReader(format);
        this.splitter = new FrameSplitter(format.pattern().length());
    }

    /** What it reads by. */
    FrameFormat format() {
        return format;
    }

    @Override
    public void begin(long nowNanos, Outlet out) {
        splitter.begin();
        last = new byte[0];
        ask(nowNanos, out);
    }

    @Override
    public void decode(byte[] bytes, int length, long arrivalNanos, Outlet out) {
        splitter.accept(bytes, length, new FrameSplitter.Taker() {
            @Override
            public boolean frame(byte[] window) {
                return reader.read(window).match(new Telling(window, arrivalNanos, out));
            }

            @Override
            public void strayed(int count) {
                out.garbled(
                        Garble.UNREADABLE,
                        count + " bytes that are no frame of " + format.title()
                                + ": is it this meter (--meter), and this speed (--baud)?");
            }
        });
    }

    @Override
    public OptionalLong dueNanos() {
        return dueNanos;
    }

    @Override
    public void due(long nowNanos, Outlet out) {
        ask(nowNanos, out);
    }

    @Override
    public boolean settled() {
        return settled;
    }

    @Override
    public Measurand measurand() {
        return setting.function().measurand();
    }

    @Override
    public String description() {
        return format.title();
    }

    private void ask(long nowNanos, Outlet out) {
        if (!format.asking().question().isEmpty()) {
            out.send(format.asking().bytes());
            dueNanos = OptionalLong.of(nowNanos + format.asking().patienceNanos());
        }
    }

    /** Says what a frame holds; gives whether it is one. */
    private final class Telling implements MeterFrame.Matcher<Boolean> {

        private final byte[] window;
        private final long nowNanos;
        private final Outlet out;

        Telling(byte[] window, long nowNanos, Outlet out) {
            this.window = window;
            this.nowNanos = nowNanos;
            this.out = out;
        }

        @Override
        public Boolean volts(MeterFrame.Volts frame) {
            if (taken() || otherCoupling(frame.alternating())) {
                return true;
            }
            if (frame.lowBattery() && !batterySaid) {
                batterySaid = true;
                out.remark(Link.LowBattery::new);
            }
            if (!frame.doubt().isEmpty()) {
                setOtherwise("the meter " + frame.doubt());
            } else {
                out.reading(new Reading(nowNanos, frame.volts() + 0.0, Condition.OK)); // no minus zero
            }
            return true;
        }

        @Override
        public Boolean beyond(MeterFrame.Beyond frame) {
            if (!taken() && !otherCoupling(frame.alternating())) {
                out.reading(Reading.without(nowNanos, frame.over() ? Condition.OVER_RANGE : Condition.NO_VALUE));
            }
            return true;
        }

        @Override
        public Boolean other(MeterFrame.Other frame) {
            if (!taken()) {
                setOtherwise("the meter reads " + frame.words() + ", not volts: turn it to "
                        + setting.function().name() + " volts");
            }
            return true;
        }

        @Override
        public Boolean refused(MeterFrame.Refused frame) {
            if (frame.framed()) {
                out.garbled(Garble.MALFORMED, "a damaged frame: " + frame.why());
            }
            return false;
        }

        /** Notes a sound frame; true where it is only the second copy of the one before. */
        private boolean taken() {
            boolean copy =
                    format.sentTwice() && Arrays.equals(last, window) && nowNanos - lastNanos <= COPY_WITHIN_NANOS;
            last = copy ? new byte[0] : window.clone();
            lastNanos = nowNanos;
            settled = true;
            if (!format.asking().question().isEmpty()) {
                dueNanos = OptionalLong.of(nowNanos + format.asking().intervalNanos());
            }
            return copy;
        }

        private boolean otherCoupling(boolean alternating) {
            boolean wanted = setting.function() == MeterSetting.Function.AC;
            if (alternating != wanted) {
                setOtherwise(
                        alternating
                                ? "the meter reads AC volts, not DC: turn it to DC, or start again with --ac"
                                : "the meter reads DC volts, not AC: turn it to AC, or start again without --ac");
            }
            return alternating != wanted;
        }

        private void setOtherwise(String words) {
            out.garbled(Garble.SET_OTHERWISE, words);
            out.reading(Reading.without(nowNanos, Condition.NO_VALUE));
        }
    }
}

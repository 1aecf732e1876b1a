package org.slugpeak.bridge.scpi;

import java.util.OptionalLong;
import org.slugpeak.bridge.instrument.Identity;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.LineSplitter;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.core.reading.Measurand;

/** The talk with a SCPI meter: it is asked who it is, is set, and is then asked for readings. One thread at a time. */
final class ScpiDecoder implements Decoder {

    private final Talk talk;
    private final LineSplitter splitter = LineSplitter.forgiving();
    private Phase phase;

    ScpiDecoder(ScpiDialect dialect, MeterSetting setting) {
        this.talk = new Talk(dialect, setting);
        this.phase = new Identifying(talk);
    }

    @Override
    public void begin(long nowNanos, Outlet out) {
        splitter.begin();
        talk.answers().begin();
        phase = new Identifying(talk);
        phase.enter(nowNanos, out);
    }

    @Override
    public void decode(byte[] bytes, int length, long arrivalNanos, Outlet out) {
        splitter.accept(bytes, length, new LineSplitter.Taker() {
            @Override
            public void line(String text, boolean whole) {
                String answer = Wording.withoutPrompt(text);
                if (!answer.isEmpty()) {
                    phase = phase.line(answer, arrivalNanos, out);
                }
            }

            @Override
            public void garbled(Garble kind, String problem) {
                out.garbled(kind, problem);
                phase.damaged(arrivalNanos);
            }
        });
    }

    @Override
    public OptionalLong dueNanos() {
        return phase.dueNanos();
    }

    @Override
    public void due(long nowNanos, Outlet out) {
        phase = phase.silence(nowNanos, out);
    }

    @Override
    public boolean settled() {
        return talk.settled();
    }

    @Override
    public Measurand measurand() {
        return talk.setting().function().measurand();
    }

    @Override
    public String description() {
        return talk.identity().map(Identity::name).orElse("a meter that has not said its name");
    }

    @Override
    public byte[] farewell() {
        boolean talked = talk.identity().isPresent() && !talk.dialect().local().isEmpty();
        return talked ? talk.message(talk.dialect().local()) : new byte[0];
    }
}

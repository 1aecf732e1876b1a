package org.slugpeak.bridge.testkit;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Untimed;

/**
 * Writes down what a decoder or a source says, one short line each, so that a test can compare it with what it expects:
 * {@code -1.25}, {@code over-range}, {@code garbled checksum}, {@code link lost}, {@code notice restarted}. One thread at a
 * time.
 */
public final class Transcript implements Outlet, SourceListener {

    private final List<String> lines = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<String> details = new ArrayList<>();
    private final StringBuilder sent = new StringBuilder();

    @Override
    public void reading(Reading reading) {
        readings.add(reading);
        lines.add(say(reading));
    }

    @Override
    public void garbled(Garble kind, String problem) {
        lines.add("garbled " + kind.code());
        details.add(problem);
    }

    @Override
    public void garbled(String where, String problem) {
        lines.add("garbled");
        details.add(problem);
    }

    @Override
    public void garbled(String where, Garble kind, String problem) {
        garbled(kind, problem);
    }

    @Override
    public void link(long tNanos, Link.State state, LinkDetail detail) {
        lines.add("link " + state.code());
        details.add(ShortDetail.of(detail));
    }

    @Override
    public void notice(long tNanos, LinkNotice notice, LinkDetail detail) {
        lines.add("notice " + notice.code());
        details.add(ShortDetail.of(detail));
    }

    @Override
    public void remark(Untimed what) {
        lines.add("remark " + what.at(0).getClass().getSimpleName());
    }

    @Override
    public void send(byte[] bytes) {
        sent.append(new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1));
    }

    @Override
    public void refused(String message) {
        lines.add("refused");
        details.add(message);
    }

    /**
     * All that was said.
     *
     * @return in order
     */
    public List<String> lines() {
        return List.copyOf(lines);
    }

    /**
     * All readings.
     *
     * @return in order
     */
    public List<Reading> readings() {
        return List.copyOf(readings);
    }

    /**
     * The texts for the user that came with damage, links, notices and refusals.
     *
     * @return in order
     */
    public List<String> details() {
        return List.copyOf(details);
    }

    /**
     * What was to be sent.
     *
     * @return joined
     */
    public String sent() {
        return sent.toString();
    }

    private static String say(Reading reading) {
        String value = reading.condition().hasValue() ? Double.toString(reading.value()) : "";
        return switch (reading.condition()) {
            case OK -> value;
            default -> (value + " " + reading.condition().code()).strip();
        };
    }
}

package org.slugpeak.bridge.source;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Consumer;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Untimed;

/** Keeps what a source said before anybody listened, and says it again in order. One thread at a time. */
final class Backlog implements SourceListener {

    private final Deque<Consumer<SourceListener>> kept = new ArrayDeque<>();
    private Optional<String> trouble = Optional.empty();

    @Override
    public void reading(Reading reading) {
        kept.add(listener -> listener.reading(reading));
    }

    @Override
    public void link(long tNanos, Link.State state, LinkDetail detail) {
        kept.add(listener -> listener.link(tNanos, state, detail));
    }

    @Override
    public void garbled(String where, String problem) {
        trouble = Optional.of(problem);
        kept.add(listener -> listener.garbled(where, problem));
    }

    @Override
    public void garbled(String where, Garble kind, String problem) {
        trouble = Optional.of(problem);
        kept.add(listener -> listener.garbled(where, kind, problem));
    }

    @Override
    public void notice(long tNanos, LinkNotice notice, LinkDetail detail) {
        kept.add(listener -> listener.notice(tNanos, notice, detail));
    }

    @Override
    public void remark(Untimed what) {
        kept.add(listener -> listener.remark(what));
    }

    Optional<String> trouble() {
        return trouble;
    }

    boolean replayTo(SourceListener listener) {
        boolean any = !kept.isEmpty();
        while (!kept.isEmpty()) {
            kept.remove().accept(listener);
        }
        return any;
    }
}

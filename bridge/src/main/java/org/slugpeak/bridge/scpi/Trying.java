package org.slugpeak.bridge.scpi;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.instrument.Identity;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;

/**
 * Finds the question that this meter answers. Many answer only some: to the others they say nothing and put error -113 into
 * their queue. So a question that is not answered soon is followed by one for the errors, which tells a meter that does not
 * know the words from one that is slow.
 */
final class Trying implements Phase {

    private static final long SOON_NANOS = TimeUnit.MILLISECONDS.toNanos(400);
    private static final long ERROR_PATIENCE_NANOS = TimeUnit.MILLISECONDS.toNanos(1500);

    private static final String DESCRIBE = ": describe it (--meter FILE.toml, see template.toml)";

    private final Talk talk;
    private int candidate;
    private boolean errorAsked;
    private boolean measuring;
    private long dueNanos;
    private long askedNanos;
    private Optional<ScpiError> lastError = Optional.empty();
    private Optional<String> notUnderstood = Optional.empty();

    Trying(Talk talk) {
        this.talk = talk;
    }

    @Override
    public void enter(long nowNanos, Outlet out) {
        talk.send(question(), out);
        askedNanos = nowNanos;
        errorAsked = false;
        measuring = false;
        dueNanos = nowNanos
                + (talk.reports() ? talk.patience(SOON_NANOS) : talk.dialect().patienceNanos());
    }

    @Override
    public Phase line(String text, long nowNanos, Outlet out) {
        Optional<ScpiError> error = ScpiError.parse(text);
        if (error.isPresent()) {
            return error(error.get(), nowNanos, out);
        }
        if (text.contains("?")) {
            return this; // the meter's own echo
        }
        Wording wording = talk.answers().wording(text);
        Optional<Reading> first = talk.answers().first(wording, nowNanos);
        if (!wording.problem().isEmpty() && first.isEmpty()) {
            out.refused(name() + " answers " + question() + " with " + wording.problem());
        }
        if (first.isEmpty()) {
            notUnderstood = Optional.of(text);
            return this;
        }
        if (first.get().condition() == Condition.NO_VALUE && !isLast()) {
            return next(nowNanos, out); // FETCh? of a meter that was never triggered
        }
        talk.settle();
        Phase next = new Measuring(talk, question());
        return next.line(text, nowNanos, out);
    }

    @Override
    public Phase silence(long nowNanos, Outlet out) {
        if (talk.reports() && !errorAsked) {
            errorAsked = true;
            talk.send(ScpiDialect.ERROR, out);
            dueNanos = nowNanos + talk.patience(ERROR_PATIENCE_NANOS);
            return this;
        }
        if (!measuring && nowNanos - askedNanos < talk.dialect().patienceNanos()) {
            measuring = true;
            dueNanos = askedNanos + talk.dialect().patienceNanos();
            return this;
        }
        return next(nowNanos, out);
    }

    @Override
    public OptionalLong dueNanos() {
        return OptionalLong.of(dueNanos);
    }

    private Phase error(ScpiError error, long nowNanos, Outlet out) {
        if (!errorAsked) {
            return this;
        }
        if (error.isNone()) {
            measuring = true;
            dueNanos = askedNanos + talk.dialect().patienceNanos();
            return this;
        }
        lastError = Optional.of(error);
        return next(nowNanos, out);
    }

    private Phase next(long nowNanos, Outlet out) {
        boolean wasLast = isLast();
        if (wasLast) {
            out.garbled(
                    Garble.UNANSWERED,
                    notUnderstood
                            .map(text -> name() + " answers '" + Wording.shortened(text) + "', which has no number of"
                                    + " volts" + DESCRIBE)
                            .orElse(name() + " answers none of "
                                    + String.join(", ", questions())
                                    + lastError.map(error -> " (" + error + ")").orElse("")
                                    + DESCRIBE));
        }
        candidate = wasLast ? 0 : candidate + 1;
        enter(nowNanos, out);
        return this;
    }

    private boolean isLast() {
        return candidate == talk.dialect().readings().size() - 1;
    }

    private String name() {
        return talk.identity().map(Identity::name).orElse("the meter");
    }

    private List<String> questions() {
        return talk.dialect().readings().stream()
                .map(each -> talk.dialect().fill(each, talk.setting()))
                .toList();
    }

    private String question() {
        return talk.dialect().readings().get(candidate);
    }
}

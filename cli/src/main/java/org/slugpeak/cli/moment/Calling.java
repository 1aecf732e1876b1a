package org.slugpeak.cli.moment;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Manner;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.session.Work;

/**
 * Decides which records call for attention. What is called is what the moment shows: a finding that stands behind an overload, a lost
 * instrument or a question calls for nothing. One thread at a time.
 */
final class Calling implements Families<Optional<Call>> {

    /** An alarm that keeps coming sooner than this only wears people down. */
    static final long ALARM_EVERY_NANOS = 10_000_000_000L;

    private final Map<Call, Long> lastAlarms = new EnumMap<>(Call.class);

    /** What a record that made one moment of another calls for. */
    Optional<Call> of(SessionRecord record, Moment before, Moment after) {
        Act act = after.act();
        if (act == Act.OVERLOAD) {
            boolean asks = record instanceof ReadingTaken || act != before.act();
            return asks ? rarely(record, Call.OVERLOAD) : record.matchFamily(this);
        }
        if (record instanceof Request.SetGenerator point && point.number() > 1) {
            return onlyIf(act == Act.DO || act == Act.WAIT, Call.BEGIN);
        }
        if (act.comesFirst() && (act != before.act() || isNew(before, after))) {
            return act.call();
        }
        return record instanceof Finding found ? found(found, act) : record.matchFamily(this);
    }

    private static boolean isNew(Moment before, Moment after) {
        return !before.link().equals(after.link()) || !before.toDo().equals(after.toDo());
    }

    private Optional<Call> found(Finding it, Act act) {
        boolean tells = it.manner() == Manner.VERDICT || it instanceof Finding.FurtherPast;
        Optional<Call> call = tells && !act.comesFirst() ? act.call() : Optional.empty();
        return call.equals(Optional.of(Call.LOOK)) ? rarely(it, Call.LOOK) : call;
    }

    private Optional<Call> rarely(SessionRecord it, Call call) {
        Long last = lastAlarms.get(call);
        if (last != null && it.tNanos() - last < ALARM_EVERY_NANOS) {
            return Optional.empty();
        }
        lastAlarms.put(call, it.tNanos());
        return Optional.of(call);
    }

    private static Optional<Call> onlyIf(boolean so, Call call) {
        return so ? Optional.of(call) : Optional.empty();
    }

    @Override
    public Optional<Call> other(SessionRecord it) {
        return Optional.empty();
    }

    @Override
    public Optional<Call> link(Link it) {
        return onlyIf(it instanceof Link.Changed changed && changed.state() == Link.State.RESUMED, Call.LINK_BACK);
    }

    @Override
    public Optional<Call> guard(Guard it) {
        return Optional.of(Call.LOOK);
    }

    /** The beginning of the first adjuster is that of the session. */
    @Override
    public Optional<Call> work(Work it) {
        if (it instanceof Adjuster adjuster) {
            return onlyIf(adjuster.action() == Adjuster.Action.BEGIN && it.tNanos() > 0, Call.BEGIN);
        }
        return onlyIf(it.manner() == Manner.ALARM, Call.LOOK);
    }

    @Override
    public Optional<Call> caution(Caution it) {
        return it instanceof Weak ? rarely(it, Call.LOOK) : onlyIf(it instanceof Caution.Suspected, Call.LOOK);
    }

    @Override
    public Optional<Call> request(Request it) {
        return it instanceof Request.CheckOver
                ? Optional.of(Call.BEGIN)
                : onlyIf(it instanceof Request.CheckDropped, Call.LOOK);
    }
}

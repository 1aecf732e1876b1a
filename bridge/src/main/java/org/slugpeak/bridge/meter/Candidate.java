package org.slugpeak.bridge.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Untimed;

/** One decoder that is tried on bytes of unknown meaning; what it makes of them is kept until it is known to be right. */
final class Candidate implements Outlet {

    /** Two whole readings and hardly any damage: by chance that does not happen. */
    private static final int READINGS_ENOUGH = 2;

    private static final int READINGS_PER_DAMAGE = 3;

    private final Decoder decoder;
    private final List<Consumer<Outlet>> kept = new ArrayList<>();
    private final List<byte[]> toSend = new ArrayList<>();
    private Optional<String> refusal = Optional.empty();
    private Optional<String> problem = Optional.empty();
    private int readings;
    private int damages;
    private int unreadable;

    Candidate(Decoder decoder) {
        this.decoder = decoder;
    }

    Decoder decoder() {
        return decoder;
    }

    boolean understands() {
        return decoder.settled() && readings >= READINGS_ENOUGH && soundEnough();
    }

    /** Whether there was hardly any damage. */
    boolean soundEnough() {
        return readings >= READINGS_PER_DAMAGE * damages;
    }

    /** How much was understood: whole messages, also those that say that the meter is set otherwise. */
    int readings() {
        return readings;
    }

    /** Why the instrument cannot be used as the user wants it. */
    Optional<String> refusal() {
        return refusal;
    }

    /** What was last found wrong. */
    Optional<String> problem() {
        return problem;
    }

    int unreadable() {
        return unreadable;
    }

    /** Hands over what has to be sent. */
    List<byte[]> takeMessages() {
        List<byte[]> messages = List.copyOf(toSend);
        toSend.clear();
        return messages;
    }

    /** Says to the real outlet what was kept. */
    void replayTo(Outlet out) {
        kept.forEach(each -> each.accept(out));
        kept.clear();
    }

    @Override
    public void reading(Reading reading) {
        readings++;
        kept.add(out -> out.reading(reading));
    }

    @Override
    public void garbled(Garble kind, String problem) {
        damages += kind == Garble.SET_OTHERWISE ? 0 : 1;
        if (kind == Garble.UNREADABLE) {
            unreadable++;
        }
        this.problem = kind == Garble.UNREADABLE ? this.problem : Optional.of(problem);
        kept.add(out -> out.garbled(kind, problem));
    }

    @Override
    public void remark(Untimed what) {
        kept.add(out -> out.remark(what));
    }

    @Override
    public void notice(long tNanos, LinkNotice notice, LinkDetail detail) {
        kept.add(out -> out.notice(tNanos, notice, detail));
    }

    @Override
    public void send(byte[] bytes) {
        toSend.add(bytes);
    }

    @Override
    public void refused(String message) {
        refusal = Optional.of(message);
    }
}

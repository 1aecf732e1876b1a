package org.slugpeak.bridge.meter;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.core.reading.Measurand;

/**
 * Finds out what an instrument speaks: listens for a moment, and if nobody talks asks for a name. Every candidate hears all
 * that comes; the first that understands it goes on alone. One thread at a time.
 */
final class Audition implements Decoder {

    private static final long LISTEN_FIRST_NANOS = TimeUnit.MILLISECONDS.toNanos(400);

    private static final long LISTEN_TO_TALK_NANOS = TimeUnit.SECONDS.toNanos(3);

    /** A board that was reset by opening the port needs up to three seconds before it speaks. */
    static final long FIRST_SILENCE_NANOS = TimeUnit.SECONDS.toNanos(5);

    /** At a second speed the board has had its time, and the slowest hand-held meter sends a frame in 1.2 s. */
    static final long NEXT_SILENCE_NANOS = TimeUnit.MILLISECONDS.toNanos(3_500);

    /** A slow talker sends a line every two seconds, and its first is thrown away. */
    private static final long TALK_NANOS = TimeUnit.SECONDS.toNanos(7);

    private static final long ANSWERING_NANOS = TimeUnit.SECONDS.toNanos(20);
    private static final int UNREADABLE_UNTIL_HOPELESS = 3;

    private final List<Candidate> talkers;
    private final HeardFamilies families;
    private final Candidate asker;
    private final long silenceNanos;
    private Optional<Decoder> found = Optional.empty();
    private boolean hopeless;
    private boolean heard;
    private boolean listened;
    private boolean asking;
    private boolean named;
    private long begunNanos;

    /** The talkers in the order of preference, the families, the one that asks, and how long silence is borne. */
    Audition(List<Decoder> talkers, HeardFamilies families, Decoder asker, long silenceNanos) {
        this.talkers = talkers.stream().map(Candidate::new).toList();
        this.families = families;
        this.asker = new Candidate(asker);
        this.silenceNanos = silenceNanos;
    }

    /** What was last found wrong with the answers of an instrument that has said its name. */
    Optional<String> problem() {
        return named ? asker.problem() : Optional.empty();
    }

    /** What only the user can say: which of some families it is. */
    Optional<String> question() {
        return found.isPresent() ? Optional.empty() : families.question();
    }

    /** Whether somebody was understood. */
    boolean isFound() {
        return found.isPresent();
    }

    /** Whether anything came at all. */
    boolean hasHeard() {
        return heard;
    }

    /** Whether bytes came and none were text: the speed is wrong. */
    boolean isUnreadable() {
        return talkers.stream().anyMatch(each -> each.unreadable() >= UNREADABLE_UNTIL_HOPELESS);
    }

    @Override
    public void begin(long nowNanos, Outlet out) {
        if (found.isPresent()) {
            found.get().begin(nowNanos, out);
            return;
        }
        begunNanos = nowNanos;
        listened = false;
        asking = false;
        listeners().forEach(each -> each.decoder().begin(nowNanos, each));
        listeners().forEach(Candidate::takeMessages);
    }

    @Override
    public void decode(byte[] bytes, int length, long arrivalNanos, Outlet out) {
        if (found.isPresent()) {
            found.get().decode(bytes, length, arrivalNanos, out);
            return;
        }
        heard = true;
        listeners().forEach(each -> each.decoder().decode(bytes, length, arrivalNanos, each));
        if (asking) {
            asker.decoder().decode(bytes, length, arrivalNanos, asker);
            pass(asker, out);
        }
        choose(out);
    }

    @Override
    public OptionalLong dueNanos() {
        if (found.isPresent()) {
            return found.get().dueNanos();
        }
        long due = begunNanos + nextLookNanos();
        for (Candidate each : talkers) {
            due = Math.min(due, each.decoder().dueNanos().orElse(due));
        }
        return OptionalLong.of(asking ? Math.min(due, asker.decoder().dueNanos().orElse(due)) : due);
    }

    @Override
    public void due(long nowNanos, Outlet out) {
        if (found.isPresent()) {
            found.get().due(nowNanos, out);
            return;
        }
        talkers.stream().filter(each -> isDue(each, nowNanos)).forEach(each -> {
            each.decoder().due(nowNanos, each);
            greet(each, out);
        });
        if (!asking && nowNanos - begunNanos >= nextLookNanos()) {
            asking = !heard || listened;
            listened = true;
            if (asking) {
                asker.decoder().begin(nowNanos, asker);
            }
        } else if (asking && isDue(asker, nowNanos)) {
            asker.decoder().due(nowNanos, asker);
        }
        pass(asker, out);
        hopeless = nowNanos - begunNanos >= patienceNanos();
    }

    @Override
    public boolean settled() {
        boolean noText = isUnreadable() && !families.understandSome();
        return found.isPresent() || hopeless || noText || families.question().isPresent();
    }

    @Override
    public Measurand measurand() {
        return found.map(Decoder::measurand).orElse(Measurand.UNKNOWN);
    }

    @Override
    public String description() {
        Decoder likeliest =
                named ? asker.decoder() : talkers.get(talkers.size() - 1).decoder();
        return found.orElse(likeliest).description();
    }

    @Override
    public OptionalDouble scaleSpan() {
        return found.map(Decoder::scaleSpan).orElse(OptionalDouble.empty());
    }

    @Override
    public byte[] farewell() {
        return found.orElse(asker.decoder()).farewell(); // one that said its name may have been set to remote already
    }

    private void choose(Outlet out) {
        Optional<Candidate> chosen = asker.decoder().settled() ? Optional.of(asker) : listener();
        if (chosen.isPresent()) {
            found = Optional.of(chosen.get().decoder());
            chosen.get().replayTo(out);
        }
    }

    /** Text that a family reads as well is left to the families: some of their frames look like numbers. */
    private Optional<Candidate> listener() {
        return families.understandSome()
                ? families.found()
                : talkers.stream().filter(Candidate::understands).findFirst();
    }

    private List<Candidate> listeners() {
        return Stream.concat(talkers.stream(), families.candidates().stream()).toList();
    }

    /** A board that talks may be asked what it is; an instrument that was not heard yet may take any word amiss. */
    private void greet(Candidate talker, Outlet out) {
        List<byte[]> messages = talker.takeMessages();
        if (heard && !named) {
            messages.forEach(out::send);
        }
    }

    private void pass(Candidate from, Outlet out) {
        from.takeMessages().forEach(out::send);
        from.refusal().ifPresent(out::refused);
        named |= from.decoder().farewell().length > 0;
    }

    /** One who is silent is asked soon; one who talks is asked only if nobody has understood it for a while. */
    private long nextLookNanos() {
        if (asking) {
            return patienceNanos();
        }
        return listened ? LISTEN_TO_TALK_NANOS : LISTEN_FIRST_NANOS;
    }

    private long patienceNanos() {
        if (named) {
            return ANSWERING_NANOS;
        }
        return heard ? TALK_NANOS : silenceNanos;
    }

    private static boolean isDue(Candidate candidate, long nowNanos) {
        OptionalLong due = candidate.decoder().dueNanos();
        return due.isPresent() && due.getAsLong() - nowNanos <= 0;
    }
}

package org.slugpeak.core.signal;

import java.time.Duration;
import java.util.Optional;
import org.slugpeak.core.word.Refused;

/**
 * How audio is turned into readings; a response outside 40 ms to 1 s, or an interval outside 1 ms to 1 s, is refused with an
 * {@link IllegalArgumentException}. Immutable; any thread may use it.
 *
 * <p>Response and noise are one trade: a reading looks at the last {@code response} of the audio and at nothing before, and
 * its noise bandwidth is about 1.6 / {@code response} (16 Hz at 100 ms). The level read is that of half the response ago.
 *
 * @param kind which number is the reading
 * @param response how long after a step nothing of the earlier level is left
 * @param interval from reading to reading
 */
public record MeterSettings(LevelKind kind, Duration response, Duration interval) {

    private static final Duration SHORTEST_RESPONSE = Duration.ofMillis(40);
    private static final Duration SHORTEST_INTERVAL = Duration.ofMillis(1);
    private static final Duration LONGEST = Duration.ofSeconds(1);

    public MeterSettings {
        complaint(response, interval).ifPresent(complaint -> {
            throw new IllegalArgumentException(complaint);
        });
    }

    private static Optional<String> complaint(Duration response, Duration interval) {
        return complaint("response", response, SHORTEST_RESPONSE)
                .or(() -> complaint("interval", interval, SHORTEST_INTERVAL));
    }

    /**
     * Settings from numbers that somebody wrote.
     *
     * @param kind which number is the reading
     * @param response 40 ms to 1 s
     * @param interval 1 ms to 1 s
     * @return the settings
     * @throws Refused where a time is out of its range
     */
    public static MeterSettings of(LevelKind kind, Duration response, Duration interval) throws Refused {
        Optional<String> complaint = complaint(response, interval);
        if (complaint.isPresent()) {
            throw new Refused(complaint.get());
        }
        return new MeterSettings(kind, response, interval);
    }

    /**
     * The tone, settled within 100 ms, a reading every 20 ms.
     *
     * @return the usual settings
     */
    public static MeterSettings defaults() {
        return new MeterSettings(LevelKind.TONE, Duration.ofMillis(100), Duration.ofMillis(20));
    }

    /**
     * The same with another number as the reading.
     *
     * @param newKind which
     * @return a copy
     */
    public MeterSettings withKind(LevelKind newKind) {
        return new MeterSettings(newKind, response, interval);
    }

    /**
     * The same with another response.
     *
     * @param newResponse 40 ms to 1 s
     * @return a copy
     */
    public MeterSettings withResponse(Duration newResponse) {
        return new MeterSettings(kind, newResponse, interval);
    }

    /**
     * The same with another interval.
     *
     * @param newInterval 1 ms to 1 s
     * @return a copy
     */
    public MeterSettings withInterval(Duration newInterval) {
        return new MeterSettings(kind, response, newInterval);
    }

    private static Optional<String> complaint(String name, Duration value, Duration least) {
        return value.compareTo(least) >= 0 && value.compareTo(LONGEST) <= 0
                ? Optional.empty()
                : Optional.of(
                        "the " + name + " must be " + least.toMillis() + " ms to 1 s, not " + value.toMillis() + " ms");
    }
}

package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.SerializableString;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Mark;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.steps.StepsBack;
import org.slugpeak.core.word.Coded;
import org.slugpeak.core.word.Refused;

/** Reads lines back into records, one at a time. One thread at a time. */
final class RecordReader {

    private static final Map<String, Parser> PARSERS = Map.ofEntries(
            entry(JsonFields.TYPE_READING, RecordReader::reading),
            entry(JsonFields.TYPE_SESSION, RecordReader::session),
            entry(JsonFields.TYPE_PASSED, RecordReader::passed),
            entry(JsonFields.TYPE_RETURNED, RecordReader::returned),
            entry(JsonFields.TYPE_HELD, RecordReader::held),
            entry(JsonFields.TYPE_TWO_PEAKS, RecordReader::twoPeaks),
            entry(JsonFields.TYPE_NO_PEAK, RecordReader::noPeak),
            entry(JsonFields.TYPE_OVERLOAD, RecordReader::overload),
            entry(JsonFields.TYPE_OVERLOAD_CLEARED, RecordReader::overloadCleared),
            entry(JsonFields.TYPE_WEAK, RecordReader::weak),
            entry(JsonFields.TYPE_DRIFT, RecordReader::drift),
            entry(JsonFields.TYPE_LINK, RecordReader::link),
            entry(JsonFields.TYPE_MARK, RecordReader::mark),
            entry(JsonFields.TYPE_ADJUSTER, RecordReader::adjuster),
            entry(JsonFields.TYPE_ADVICE, RecordReader::advice),
            entry(JsonFields.TYPE_END, RecordReader::end));

    private static final Map<String, NoPeakReason> REASONS =
            Stream.of(NoPeakReason.values()).collect(Collectors.toMap(NoPeakReason::code, Function.identity()));
    private static final Map<String, Trend> TRENDS =
            Stream.of(Trend.values()).collect(Collectors.toMap(Trend::code, Function.identity()));

    private final JsonObject object = new JsonObject();

    /** The record of a line; empty for a type that is not known here. */
    Optional<SessionRecord> read(byte[] bytes, int from, int to) throws BadLine {
        object.read(bytes, from, to);
        Parser parser = PARSERS.get(object.text(JsonFields.TYPE));
        if (parser == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(parser.parse(object));
        } catch (DateTimeParseException e) {
            throw impossible(String.valueOf(e.getMessage()));
        }
    }

    private static BadLine impossible(String what) {
        return new BadLine("has a field that cannot be: " + what);
    }

    private static SessionRecord session(JsonObject it) throws BadLine {
        long version = it.count(JsonFields.VERSION);
        if (version > SessionStart.CURRENT_VERSION) {
            throw new NewerVersion("is in record version " + version + ", and this slugpeak reads up to version "
                    + SessionStart.CURRENT_VERSION);
        }
        return new SessionStart(
                (int) version,
                Instant.parse(it.text(JsonFields.STARTED_AT)),
                it.text(JsonFields.SOURCE),
                new Measurand(it.text(JsonFields.QUANTITY), it.text(JsonFields.UNIT)),
                new PeakSettings(seek(it), dwell(it)),
                it.text(JsonFields.TOOL),
                it.flag(JsonFields.STEPPED));
    }

    private static Seek seek(JsonObject it) throws BadLine {
        try {
            return Seek.ofCode(it.text(JsonFields.SEEK));
        } catch (Refused e) {
            throw impossible(e.reason());
        }
    }

    private static Duration dwell(JsonObject it) throws BadLine {
        if (!it.has(JsonFields.DWELL)) {
            return PeakSettings.defaults().dwell();
        }
        Duration dwell = Duration.ofNanos(it.nanos(JsonFields.DWELL));
        if (dwell.isNegative() || dwell.isZero()) {
            throw impossible("the dwell must be positive, not " + dwell);
        }
        return dwell;
    }

    private static SessionRecord reading(JsonObject it) throws BadLine {
        Condition condition = coded(Condition.class, it, JsonFields.CONDITION);
        double value = condition.hasValue() ? it.number(JsonFields.VALUE) : 0;
        if (!Double.isFinite(value)) {
            throw impossible("a reading's value must be finite, not " + value);
        }
        return new ReadingTaken(
                new Reading(it.nanos(JsonFields.T), value, condition),
                it.number(JsonFields.SMOOTHED),
                it.number(JsonFields.BEST),
                it.number(JsonFields.BEST_SIGMA),
                it.number(JsonFields.OF_BEST),
                known(TRENDS, it, JsonFields.TREND));
    }

    private static SessionRecord passed(JsonObject it) throws BadLine {
        return new Passed(
                it.nanos(JsonFields.T),
                it.number(JsonFields.BEST),
                it.nanos(JsonFields.BEST_AT),
                it.number(JsonFields.DROP_DB),
                stepsBack(it));
    }

    private static Optional<StepsBack> stepsBack(JsonObject it) throws BadLine {
        if (!it.has(JsonFields.STEPS_BACK)) {
            return Optional.empty();
        }
        return Optional.of(new StepsBack(
                it.number(JsonFields.STEPS_BACK),
                it.number(JsonFields.STEPS_ERROR),
                it.number(JsonFields.TOP),
                it.number(JsonFields.TOP_ERROR)));
    }

    private static SessionRecord returned(JsonObject it) throws BadLine {
        return new Returned(it.nanos(JsonFields.T), it.number(JsonFields.VALUE), it.number(JsonFields.LOSS_DB));
    }

    private static SessionRecord held(JsonObject it) throws BadLine {
        return new Held(it.nanos(JsonFields.T), it.number(JsonFields.VALUE), it.number(JsonFields.LOSS_DB));
    }

    private static SessionRecord twoPeaks(JsonObject it) throws BadLine {
        return new TwoPeaks(
                it.nanos(JsonFields.T),
                it.number(JsonFields.FIRST),
                it.number(JsonFields.SECOND),
                it.number(JsonFields.DIP_DB));
    }

    private static SessionRecord noPeak(JsonObject it) throws BadLine {
        return new NoPeak(it.nanos(JsonFields.T), known(REASONS, it, JsonFields.REASON));
    }

    private static SessionRecord overload(JsonObject it) throws BadLine {
        return new Overload(
                it.nanos(JsonFields.T), coded(Overload.Cause.class, it, JsonFields.CAUSE), it.text(JsonFields.ADVICE));
    }

    private static SessionRecord overloadCleared(JsonObject it) throws BadLine {
        return new OverloadCleared(it.nanos(JsonFields.T));
    }

    private static SessionRecord weak(JsonObject it) throws BadLine {
        return new Weak(it.nanos(JsonFields.T), it.number(JsonFields.SNR_DB), it.text(JsonFields.ADVICE));
    }

    private static SessionRecord drift(JsonObject it) throws BadLine {
        return new Drift(it.nanos(JsonFields.T), it.number(JsonFields.PER_MINUTE), it.text(JsonFields.UNIT));
    }

    private static SessionRecord link(JsonObject it) throws BadLine {
        return new Link(
                it.nanos(JsonFields.T), coded(Link.State.class, it, JsonFields.STATE), it.text(JsonFields.DETAIL));
    }

    private static SessionRecord mark(JsonObject it) throws BadLine {
        return new Mark(it.nanos(JsonFields.T), it.text(JsonFields.TEXT));
    }

    private static SessionRecord adjuster(JsonObject it) throws BadLine {
        return new Adjuster(
                it.nanos(JsonFields.T),
                it.text(JsonFields.NAME),
                coded(Adjuster.Action.class, it, JsonFields.ACTION),
                it.number(JsonFields.BEFORE),
                it.number(JsonFields.AFTER),
                it.number(JsonFields.GAIN_DB));
    }

    private static SessionRecord advice(JsonObject it) throws BadLine {
        return new Advice(
                it.nanos(JsonFields.T),
                it.text(JsonFields.TOPIC),
                it.text(JsonFields.TEXT),
                it.number(JsonFields.AMOUNT));
    }

    private static SessionRecord end(JsonObject it) throws BadLine {
        return new SessionEnd(it.nanos(JsonFields.T), it.count(JsonFields.READINGS), it.text(JsonFields.REASON));
    }

    private static <E extends Enum<E> & Coded> E coded(Class<E> type, JsonObject it, SerializableString name)
            throws BadLine {
        String word = it.text(name);
        return Coded.find(type, word)
                .orElseThrow(() -> impossible("no " + name.getValue() + " is called '" + word + "'"));
    }

    private static <T> T known(Map<String, T> words, JsonObject it, SerializableString name) throws BadLine {
        String word = it.text(name);
        T value = words.get(word);
        if (value == null) {
            throw new BadLine("has an unknown '" + name.getValue() + "': " + word);
        }
        return value;
    }

    private static Map.Entry<String, Parser> entry(SerializableString type, Parser parser) {
        return Map.entry(type.getValue(), parser);
    }

    private interface Parser {
        SessionRecord parse(JsonObject it) throws BadLine;
    }
}

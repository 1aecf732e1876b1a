package org.slugpeak.bridge.log;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.slugpeak.core.session.SessionRecord;

/**
 * One kind of record that version 1 writes as advice. Immutable.
 *
 * @param <T> what is written
 * @param word the topic
 * @param amount the figure that counts; NaN for none
 * @param unit what it counts in
 * @param text what stands as text: a sentence, or what version 1 has no other field for
 * @param maker what is made of it when it is read
 */
record AdviceTopic<T extends SessionRecord>(
        String word,
        ToDoubleFunction<T> amount,
        Unit unit,
        Function<T, String> text,
        Function<AdviceLine, SessionRecord> maker) {

    AdviceLine line(T from) {
        return new AdviceLine(from.tNanos(), word, text.apply(from), amount.applyAsDouble(from));
    }
}

package org.slugpeak.bridge.generator;

import java.util.List;
import java.util.Optional;

/**
 * How a generator talks, whatever it is told. Immutable.
 *
 * @param lineEnd ends each line that is sent
 * @param greeting sent first
 * @param identify asks for its name; empty where it has none
 * @param farewell sent last
 * @param acknowledged how each line that asks nothing is answered; empty where it says nothing to it
 * @param refused answers that mean that it does not do it
 * @param errors asks for its oldest error; empty where it keeps none
 * @param noError the answers where there is none
 * @param patienceNanos the longest that an answer may take
 */
record TalkForm(
        String lineEnd,
        List<String> greeting,
        Optional<String> identify,
        List<String> farewell,
        Optional<AnswerForm> acknowledged,
        List<AnswerForm> refused,
        Optional<String> errors,
        List<AnswerForm> noError,
        long patienceNanos) {

    TalkForm {
        greeting = List.copyOf(greeting);
        farewell = List.copyOf(farewell);
        refused = List.copyOf(refused);
        noError = List.copyOf(noError);
    }
}

package org.slugpeak.bridge.frame;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a bit or a code means: marks, and a factor for the number. Immutable.
 *
 * @param marks may be empty
 * @param factor 1 for none
 */
record Meaning(List<FrameMark> marks, double factor) {

    /** The marks by their words. */
    static final Map<String, FrameMark> WORDS = Arrays.stream(FrameMark.values())
            .collect(Collectors.toUnmodifiableMap(FrameMark::code, Function.identity()));

    static final Meaning NONE = new Meaning(List.of(), 1);
}

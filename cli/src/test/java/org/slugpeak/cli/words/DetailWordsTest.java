package org.slugpeak.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkDetail.Cause;
import org.slugpeak.core.session.LinkDetail.Sender;

class DetailWordsTest {

    /** The words that version 1 of the log has kept since its first release. */
    private static Stream<Arguments> words() {
        return Stream.of(
                Arguments.of("", LinkDetail.NONE),
                Arguments.of("plug it in", new LinkDetail.Told("plug it in")),
                Arguments.of("the plug was pulled or the instrument switched off; waiting for it", Cause.PULLED),
                Arguments.of(
                        "the sound input is gone; plug it in again with the set OFF and unplugged", Cause.SOUND_GONE),
                Arguments.of("the sound input gives no samples; waiting for it", Cause.SOUND_SILENT),
                Arguments.of("the meter has changed its range: fix it with --range", Cause.RANGE_TO_BE_ASKED_FOR),
                Arguments.of("the meter has changed its range: fix the range on the meter", Cause.RANGE_TO_BE_SET),
                Arguments.of("the instrument was reset: its clock has begun again", Cause.CLOCK_AGAIN),
                Arguments.of("the instrument could not send all its readings", Cause.NOT_ALL_SENT),
                Arguments.of("no reading for 2.5 s", new LinkDetail.Silent(2.5)),
                Arguments.of(
                        "no reading yet, after 5 s: see that the meter is on, sends, and is the one that --meter names",
                        new LinkDetail.NothingYet(5.01, Sender.METER)),
                Arguments.of(
                        "no reading yet, after 10 s: see that whatever writes here runs, and sends each line at once",
                        new LinkDetail.NothingYet(10, Sender.PROGRAM)),
                Arguments.of("after 4.6 s", new LinkDetail.After(4.6)),
                Arguments.of("adc was reset and has started anew", new LinkDetail.Board("adc", true)),
                Arguments.of("adc was set to another range", new LinkDetail.Board("adc", false)),
                Arguments.of("the time column starts again at line 6", new LinkDetail.TimesAgain(6)));
    }

    @ParameterizedTest
    @MethodSource("words")
    void eachKindIsSaidInTheWordsThatLogsHaveAlwaysKept(String expected, LinkDetail detail) {
        assertEquals(expected, DetailWords.of(detail));
    }
}

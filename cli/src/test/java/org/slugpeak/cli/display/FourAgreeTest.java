package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Call;
import org.slugpeak.cli.moment.Called;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.moment.MomentWords;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.TwoPeaks;

/**
 * Word, sign, line and call of every state of a session, drawn in every size. The expected ones are written here by hand, from what the
 * README says of each word.
 */
class FourAgreeTest {

    /** A record, and what it must be: the act, its word, the beginning of its line, and what is called. */
    private record Expected(SessionRecord record, Act act, String word, String line, Optional<Call> call) {}

    private static Expected state(SessionRecord record, Act act, String word, String line, Call call) {
        return new Expected(record, act, word, line, Optional.of(call));
    }

    private static Expected quiet(SessionRecord record, Act act, String word, String line) {
        return new Expected(record, act, word, line, Optional.empty());
    }

    private static List<Expected> session() {
        return List.of(
                quiet(Sessions.reading(1, 0.5, 0.5, Trend.RISING), Act.TURN, "TURN", "turn slowly"),
                state(
                        new Finding.Hinted(at(2), Hint.WRONG_WAY, 0.4),
                        Act.OTHER_WAY,
                        "OTHER WAY",
                        "falling: turn the other way",
                        Call.LOOK),
                quiet(Sessions.reading(3, 0.9, 0.9, Trend.RISING), Act.TURN, "TURN", "turn slowly"),
                state(new Passed(at(4), 0.9, at(3.5), 0.2), Act.BACK, "BACK 0.0", "past it: back", Call.BACK),
                state(new Returned(at(6), 0.9, 0), Act.STOP, "STOP", "on the peak: stop", Call.STOP),
                state(new Held(at(8), 0.9, 0), Act.HELD, "HELD", "held: recorded", Call.HELD),
                state(
                        new Request.Asked(at(9), CheckKind.LEVEL, 0),
                        Act.DO,
                        "HALVE IT",
                        "halve the generator",
                        Call.LOOK),
                state(new Request.CheckOver(at(10)), Act.HELD, "HELD", "held: recorded", Call.BEGIN),
                state(
                        new Overload(at(11), Overload.Cause.CLIPPING, Double.NaN),
                        Act.OVERLOAD,
                        "OVERLOAD",
                        "OVERLOAD, clipping",
                        Call.OVERLOAD),
                quiet(new OverloadCleared(at(12)), Act.HELD, "HELD", "held: recorded"),
                state(
                        new Link.Changed(at(13), Link.State.LOST, new LinkDetail.Told("it has gone")),
                        Act.NO_LINK,
                        "NO LINK",
                        "LINK LOST",
                        Call.NO_LINK),
                state(
                        new Link.Changed(at(14), Link.State.RESUMED, LinkDetail.NONE),
                        Act.HELD,
                        "HELD",
                        "held",
                        Call.LINK_BACK),
                state(new TwoPeaks(at(15), 0.9, 0.8, 1.1), Act.TWO_PEAKS, "2 PEAKS", "two peaks", Call.LOOK),
                state(new NoPeak(at(40), NoPeakReason.FLAT), Act.NO_PEAK, "NO PEAK", "no peak", Call.LOOK),
                quiet(new Request.HandsOff(at(41), false), Act.HANDS_OFF, "HANDS OFF", "hands off"),
                quiet(new SessionEnd(at(42), 3, EndReason.Known.QUIT), Act.END, "END", "end, 3 readings"));
    }

    private static long at(double seconds) {
        return Sessions.seconds(seconds);
    }

    @ParameterizedTest
    @CsvSource({"40,12", "60,18", "80,24", "120,40", "200,60"})
    void inEverySizeWordSignLineAndCallAreThoseOfTheState(int width, int height) {
        Page page = new Page(Symbols.BLOCKS, List.of());
        MomentKeeper keeper = new MomentKeeper();
        keeper.take(Sessions.start(Seek.PEAK));
        long calls = 0;
        for (Expected expected : session()) {
            keeper.take(expected.record());
            Moment moment = keeper.moment();
            assertEquals(expected.act(), moment.act(), expected.toString());
            assertEquals(expected.word(), MomentWords.word(moment));
            assertTrue(MomentWords.sentence(moment).startsWith(expected.line()), MomentWords.sentence(moment));
            long before = calls;
            assertEquals(
                    expected.call(),
                    moment.called().filter(it -> it.number() > before).map(Called::call));
            calls = moment.called().map(Called::number).orElse(0L);
            isDrawn(expected, page.draw(moment, Aside.NONE, width, height));
        }
    }

    private static void isDrawn(Expected expected, Grid grid) {
        String drawn = String.join("\n", grid.lines());
        Set<Act> signs = EnumSet.noneOf(Act.class);
        for (Act act : Act.values()) {
            for (int scale = 1; scale <= 5; scale++) {
                if (BlockText.stands(grid, String.valueOf(Signs.shape(act)), scale)) {
                    signs.add(act);
                }
            }
        }
        assertTrue(signs.contains(expected.act()), () -> signs + " on\n" + drawn);
    }

    @Test
    void theLinesForAScreenReaderSayTheSame() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PlainLines lines = new PlainLines(new PrintStream(out, true, StandardCharsets.UTF_8));
        lines.take(Sessions.start(Seek.PEAK));
        List<String> missing = new ArrayList<>();
        for (Expected expected : session()) {
            out.reset();
            lines.take(expected.record());
            String said = out.toString(StandardCharsets.UTF_8);
            boolean isAnswer = expected.act() == Act.HELD && !(expected.record() instanceof Held);
            if (!isAnswer && !said.startsWith(expected.line()) && !said.contains(": " + expected.line())) {
                missing.add(expected.line() + " but " + said.strip());
            }
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void everyStateThatThereIsIsAmongThem() {
        Set<Act> there = new TreeSet<>(session().stream().map(Expected::act).toList());
        there.add(Act.WAIT); // before the first reading, which PageTest draws
        assertEquals(EnumSet.allOf(Act.class), there);
    }

    @Test
    void noSignIsThatOfAnotherAct() {
        Set<Character> shapes = new TreeSet<>();
        Set<String> plain = new TreeSet<>();
        for (Act act : Act.values()) {
            assertTrue(shapes.add(Signs.shape(act)) && plain.add(Signs.plain(act)), act.name());
        }
    }
}

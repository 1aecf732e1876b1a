package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;

/** Chart, table and headline of a report say the same, whatever was done to the generator. */
class OneScaleTest {

    private final StoryTeller teller = Sessions.teller("a");
    private double seconds;

    private void tell(SessionRecord... records) {
        Stream.of(records).map(Sessions::line).forEach(teller::take);
    }

    private void readings(double value) {
        for (int i = 0; i < 5; i++) {
            seconds++;
            tell(Sessions.reading(seconds, value, value));
        }
    }

    /** Each adjuster gains something, and after each the generator is put so that the meter shows the same again. */
    @Property
    void theCourseEndsAsMuchAboveWhereItBeganAsTheAdjustersGained(
            @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 0.1, max = 12) Double> gainsDb) {
        OneScaleTest session = new OneScaleTest();
        session.work(gainsDb);
        SessionStory story = session.teller.story("");
        double sum = gainsDb.stream().mapToDouble(Double::doubleValue).sum();
        LevelCourse course = story.levels().courses().get(0);
        assertEquals(sum, course.highest() - course.zero(), 1e-6, "chart");
        assertEquals(sum, story.turns().get(gainsDb.size() - 1).after(), 1e-6, "table");
        assertEquals(0, story.turns().get(0).before(), 1e-9);
        assertEquals(-sum, story.turns().get(gainsDb.size() - 1).generatorDb() - gainsDb.get(gainsDb.size() - 1), 1e-6);
        story.turns().forEach(turn -> assertEquals(turn.gainDb(), turn.after() - turn.before(), 1e-9));
    }

    private void work(List<Double> gainsDb) {
        readings(1);
        for (double gainDb : gainsDb) {
            tell(Sessions.begin(seconds, "C", 1));
            readings(Decibels.ratio(gainDb));
            tell(Sessions.done(seconds, "C", 1, Decibels.ratio(gainDb), gainDb));
            tell(new Request.CutGenerator(Sessions.nanos(seconds), 0.5, 1));
            seconds++;
            tell(Sessions.reading(seconds, Decibels.ratio(gainDb / 2), 1));
            seconds++;
            tell(new Request.GeneratorChanged(Sessions.nanos(seconds), -gainDb));
            readings(1);
        }
    }

    @Test
    void whileTheGeneratorIsTurnedNothingIsDrawn() {
        work(List.of(6.0));
        List<Trace.Stretch> stretches =
                teller.story("").levels().courses().get(0).stretches();
        assertTrue(stretches.stream().allMatch(each -> each.most() < 1e-6 || each.least() > 5.99), stretches::toString);
    }

    @Test
    void theGeneratorIsOnTheChartAndInTheTable() {
        work(List.of(6.0, 3.0));
        String page = HtmlReport.of(List.of(teller.story("")), Sessions.COVER);
        assertEquals(2, page.split("class=\"generator\"", -1).length - 1, page);
        assertTrue(page.contains(">-6.0 dB</text>"), page);
        assertTrue(page.contains("<th scope=\"col\">generator</th>") || page.contains("<th>generator</th>"), page);
        assertTrue(page.contains("<td>-6.0 dB</td><td>done</td>"), page);
    }

    @Test
    void twoMeterPointsHaveTwoCoursesEachFromWhatWasFoundThere() {
        work(List.of(6.0));
        tell(new Caution.Checked(Sessions.nanos(seconds), CheckKind.REST, CheckFigures.of(0.5)));
        tell(Sessions.begin(seconds, "C", 1.5));
        readings(2.5);
        tell(Sessions.done(seconds, "C", 1.5, 2.5, 6.02));
        SessionStory story = teller.story("");
        assertEquals(2, story.levels().courses().size());
        assertEquals(0, story.turns().get(1).before(), 1e-9);
        assertEquals(
                6.02,
                story.levels().courses().get(1).highest()
                        - story.levels().courses().get(1).zero(),
                0.01);
    }

    /** "-88.8 dB" for a discriminator that was set to zero says nothing. */
    @Test
    void aZeroStandsInVolts() {
        tell(new Said.Command(0, new Instruction.Find(Seek.ZERO)));
        tell(Sessions.begin(0, "T3 bottom", -0.4));
        readings(0.00002);
        tell(Sessions.done(seconds, "T3 bottom", -0.4, 0.00002, Double.NaN));
        SessionStory story = teller.story("");
        assertTrue(Double.isNaN(story.turns().get(0).gainDb()));
        String page = HtmlReport.of(List.of(story), Sessions.COVER);
        assertTrue(page.contains("<td>-0.4 V</td><td>0.00002 V</td><td>0.00002 V</td><td></td>"), page);
        assertTrue(page.contains("in its own unit, where a zero was sought"), page);
        assertFalse(page.contains("Gain of each adjuster"), page);
    }

    /** From 0.6 mV over a rest known to 1 mV: the log says that nobody knows the gain, and so does the report. */
    @Test
    void aGainThatTheLogDoesNotKnowIsNotMadeUp() {
        tell(Sessions.begin(0, "C1", 0.0006));
        readings(1);
        tell(Sessions.done(seconds, "C1", 0.0006, 1, Double.NaN));
        assertTrue(Double.isNaN(teller.story("").turns().get(0).gainDb()));
        assertFalse(HtmlReport.of(List.of(teller.story("")), Sessions.COVER).contains("Gain of each adjuster"));
    }

    @Test
    void whatWasReadUntilTheGeneratorWasAskedForIsDrawn() {
        readings(1);
        tell(Sessions.begin(seconds, "C", 1));
        readings(2);
        long asked = Sessions.nanos(seconds);
        tell(new Request.CutGenerator(asked, 0.5, 1));
        tell(new Request.GeneratorChanged(Sessions.nanos(seconds + 1), -6.02));
        List<Trace.Stretch> stretches =
                teller.story("").levels().courses().get(0).stretches();
        assertEquals(asked, stretches.get(stretches.size() - 1).tNanos());
    }

    @Test
    void clipsThatMoveAfterTheLastAdjusterBelongToNoCourse() {
        work(List.of(6.0));
        tell(Sessions.begin(seconds, "C2", 1), Sessions.done(seconds, "C2", 1, 1, 0));
        readings(0.0001);
        tell(new Caution.Checked(Sessions.nanos(seconds), CheckKind.REST, CheckFigures.of(0)));
        tell(Sessions.begin(seconds, "C3", 1));
        readings(1);
        assertEquals(0, teller.story("").levels().courses().get(0).lowest(), 1e-6);
    }
}

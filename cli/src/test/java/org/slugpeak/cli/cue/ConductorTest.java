package org.slugpeak.cli.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;
import static org.slugpeak.cli.display.Sessions.seconds;
import static org.slugpeak.cli.display.Sessions.start;
import static org.slugpeak.cli.display.Sessions.untrusted;
import static org.slugpeak.cli.display.Sessions.zeroReading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.Work;

class ConductorTest {

    private final List<Event> events = new ArrayList<>();
    private final List<String> words = new ArrayList<>();
    private Aim aim = Aim.SILENCE;

    private final Conductor conductor = conductor(CueMode.BEAT);

    private Conductor conductor(CueMode mode) {
        return new Conductor(mode, new CueTarget() {
            @Override
            public void aim(Aim newAim) {
                aim = newAim;
            }

            @Override
            public void play(Event event) {
                events.add(event);
            }

            @Override
            public void say(String said) {
                words.add(said);
            }
        });
    }

    private static double octaves(double high, double low) {
        return Math.log(high / low) / Math.log(2);
    }

    @Test
    void climbingTheToneRisesByAnOctaveForSixDecibelsAndDoesNotBeat() {
        conductor.take(start(Seek.PEAK));
        conductor.take(reading(0, 0.5, 0.5, Trend.RISING));
        double before = aim.liveHertz();
        assertEquals(800, before, 1e-9);
        conductor.take(reading(0.1, 1.0, 1.0, Trend.RISING));
        assertEquals(20 * Math.log10(2) / 6, octaves(aim.liveHertz(), before), 1e-9);
        assertEquals(aim.referenceHertz(), aim.liveHertz(), 1e-9);
    }

    @Test
    void whileTheBestStillHasToBeMadeSureOfTheToneFollowsTheReadingAndDoesNotBeat() {
        conductor.take(start(Seek.PEAK));
        conductor.take(reading(0, 0.5, 0.5, Trend.RISING));
        conductor.take(reading(0.1, 1.0, 0.8, Trend.RISING));
        double ahead = aim.liveHertz();
        assertEquals(20 * Math.log10(2) / 6, octaves(ahead, 800), 1e-9);
        assertEquals(ahead, aim.referenceHertz(), 1e-9);
        conductor.take(reading(0.2, 1.0, 1.0, Trend.RISING));
        assertEquals(ahead, aim.liveHertz(), 1e-9, "the best that catches up moves nothing");
    }

    @Test
    void belowTheBestTheToneBeatsAgainstIt() {
        conductor.take(start(Seek.PEAK));
        conductor.take(reading(0, 1.0, 1.0, Trend.RISING));
        conductor.take(reading(0.1, Math.pow(10, -0.1 / 20), 1.0, Trend.FALLING));
        assertEquals(800, aim.referenceHertz(), 1e-9);
        assertEquals(40.0 / 1200, octaves(aim.referenceHertz(), aim.liveHertz()), 1e-9);
        assertEquals(Gate.OPEN, aim.reference());
    }

    @Test
    void inPitchModeTheBestIsOnlyPinged() {
        Conductor pitch = conductor(CueMode.PITCH);
        pitch.take(reading(0, 1.0, 1.0, Trend.RISING));
        assertEquals(Gate.OPEN, aim.live());
        assertEquals(Gate.PINGS, aim.reference());
    }

    @Test
    void aClimbThatOutgrowsTheRangeDropsAnOctaveAndSaysSo() {
        for (int i = 0; i <= 40; i++) {
            double value = 0.01 * Math.pow(10, i / 20.0);
            conductor.take(reading(i * 0.1, value, value, Trend.RISING));
            assertTrue(aim.liveHertz() >= 700 && aim.liveHertz() <= 2000);
        }
        long announced = events.stream().filter(Event.SHIFT::equals).count();
        double climbedOctaves = 40 / 6.0;
        double heardOctaves = octaves(aim.liveHertz(), 800);
        assertEquals(Math.round(climbedOctaves - heardOctaves), announced, "each octave that was taken back");
        assertTrue(announced >= 5);
    }

    @Test
    void bothChangesOfScaleAreAnnouncedAndNoiseAtTheBorderIsNot() {
        conductor.take(reading(0, 1.0, 1.0, Trend.RISING));
        for (double distanceDb : new double[] {0.5, 0.95, 1.05, 0.95, 1.05, 1.2, 1.05, 0.95, 1.05, 0.8, 0.95}) {
            conductor.take(reading(1, Math.pow(10, -distanceDb / 20), 1.0, Trend.FALLING));
        }
        assertEquals(List.of(Event.COARSE, Event.FINE), events);
    }

    @Test
    void farBelowTheScaleTheToneIsChopped() {
        conductor.take(reading(0, 1.0, 1.0, Trend.RISING));
        conductor.take(reading(1, 0.05, 1.0, Trend.FALLING));
        assertEquals(Gate.CHOPPED, aim.live());
        assertEquals(200, aim.liveHertz());
    }

    @Test
    void passedReturnedAndHeldAreSaidOnceEach() {
        conductor.take(new Passed(seconds(1), 1.0, seconds(0.8), 0.2));
        conductor.take(new Returned(seconds(2), 1.0, 0));
        conductor.take(new Held(seconds(4), 1.0, 0));
        assertEquals(List.of(Event.PASSED, Event.RETURNED, Event.HELD), events);
    }

    @Test
    void onceHeldThereIsSilenceUntilTheNextIsTurned() {
        conductor.take(reading(0, 1.0, 1.0, Trend.RISING));
        conductor.take(new Held(seconds(4), 1.0, 0));
        conductor.take(reading(4, 1.0, 1.0, Trend.STEADY));
        assertEquals(Gate.SHUT, aim.live());
        conductor.take(reading(9, 0.95, 1.0, Trend.FALLING));
        assertEquals(Gate.OPEN, aim.live());
    }

    @Test
    void atRestTheToneGivesWayToPings() {
        conductor.take(reading(0, 1.0, 1.0, Trend.RISING));
        conductor.take(reading(4.9, 1.0, 1.0, Trend.STEADY));
        assertEquals(Gate.OPEN, aim.live());
        conductor.take(reading(5.1, 1.0, 1.0, Trend.STEADY));
        assertEquals(Gate.PINGS, aim.live());
        assertEquals(Gate.SHUT, aim.reference());
    }

    @Test
    void anOverloadIsRoughAndAtMostOnceInTenSeconds() {
        conductor.take(reading(0, 1.0, 1.0, Trend.RISING));
        conductor.take(new Overload(seconds(1), Overload.Cause.CLIPPING, Double.NaN));
        for (int i = 0; i < 200; i++) {
            conductor.take(untrusted(1 + i * 0.1, Condition.CLIPPING, 1.0, 1.0));
        }
        assertEquals(List.of(Event.OVERLOAD, Event.OVERLOAD), events, "at 1 s and at 11 s");
        assertEquals(Gate.SHUT, aim.live(), "no tone that cannot be trusted");
        conductor.take(new OverloadCleared(seconds(21)));
        conductor.take(reading(21, 1.0, 1.0, Trend.RISING));
        assertEquals(Gate.OPEN, aim.live());
    }

    @Test
    void anOverloadThatComesAndGoesDoesNotNagEither() {
        for (int i = 0; i < 50; i++) {
            conductor.take(new Overload(seconds(i * 0.2), Overload.Cause.CLIPPING, Double.NaN));
            conductor.take(new OverloadCleared(seconds(i * 0.2 + 0.1)));
        }
        assertEquals(List.of(Event.OVERLOAD), events);
    }

    @ParameterizedTest
    @EnumSource(value = Link.State.class, names = "RESUMED", mode = EnumSource.Mode.EXCLUDE)
    void aLinkThatIsLostOrFellSilentKnocksTwiceAndSilencesTheOldTone(Link.State state) {
        conductor.take(reading(0, 1.0, 1.0, Trend.RISING));
        conductor.take(new Link.Changed(seconds(1), state, new LinkDetail.Told("what happened")));
        assertEquals(Gate.SHUT, aim.live());
        conductor.take(new Link.Changed(seconds(9), Link.State.RESUMED, LinkDetail.NONE));
        conductor.take(reading(9, 1.0, 1.0, Trend.RISING));
        assertEquals(List.of(Event.LINK_LOST, Event.LINK_BACK), events);
        assertEquals(Gate.OPEN, aim.live());
    }

    @Test
    void aSourceThatNeverBeganIsHeardToo() {
        conductor.take(new Link.Changed(0, Link.State.STALE, new LinkDetail.Told("no reading yet")));
        assertEquals(List.of(Event.LINK_LOST), events);
        assertEquals(Gate.SHUT, aim.live());
    }

    @Test
    void whatNeedsALookAsksForOne() {
        conductor.take(new NoPeak(seconds(1), NoPeakReason.FLAT));
        conductor.take(new NoPeak(seconds(2), NoPeakReason.REVERSED));
        conductor.take(new NoPeak(seconds(12), NoPeakReason.REVERSED));
        assertEquals(List.of(Event.LOOK, Event.LOOK), events);
    }

    @Test
    void aDipSaysFirstThatHigherIsNearerAndThenRisesAsTheReadingFalls() {
        conductor.take(start(Seek.DIP));
        assertTrue(words.get(0).contains("higher is nearer"));
        conductor.take(reading(0, 1.0, 1.0, Trend.FALLING));
        double before = aim.liveHertz();
        conductor.take(reading(0.1, 0.5, 0.5, Trend.FALLING));
        assertTrue(aim.liveHertz() > before);
        conductor.take(reading(0.2, 0.6, 0.5, Trend.RISING));
        assertTrue(aim.liveHertz() < aim.referenceHertz());
    }

    @Test
    void aZeroIsHighestAtZeroAndChoppedBelowIt() {
        conductor.take(start(Seek.ZERO));
        assertTrue(words.get(0).contains("chopped"));
        conductor.take(zeroReading(0, 0.5, Trend.RISING));
        double far = aim.liveHertz();
        conductor.take(zeroReading(0.1, 0.05, Trend.FALLING));
        assertTrue(aim.liveHertz() > far);
        assertEquals(Gate.OPEN, aim.live());
        conductor.take(zeroReading(0.2, -0.05, Trend.RISING));
        assertEquals(Gate.CHOPPED, aim.live());
        conductor.take(zeroReading(0.3, 0, Trend.FALLING));
        assertEquals(aim.referenceHertz(), aim.liveHertz(), 1e-9);
    }

    @Test
    void theNextAdjusterBeginsTheScaleAnew() {
        conductor.take(reading(0, 0.5, 0.5, Trend.RISING));
        conductor.take(reading(1, 1.0, 1.0, Trend.RISING));
        conductor.take(new Adjuster(seconds(2), "T1 top", Adjuster.Action.BEGIN, 1, Double.NaN, Double.NaN));
        conductor.take(reading(2, 1.0, 1.0, Trend.STEADY));
        assertEquals(800, aim.liveHertz(), 1e-9);
        assertEquals(List.of(Event.BEGIN), events);
    }

    @Test
    void theEndIsSilent() {
        conductor.take(reading(0, 1.0, 1.0, Trend.RISING));
        conductor.take(new SessionEnd(seconds(1), 1, EndReason.Known.QUIT));
        assertEquals(Gate.SHUT, aim.live());
        assertFalse(events.contains(Event.LOOK));
    }

    @Test
    void whatTheEyesMustReadIsHeardEachTime() {
        conductor.take(new Request.Asked(seconds(1), CheckKind.LEVEL, 0));
        conductor.take(new Request.Undamp(seconds(1), new Damping("T1 bottom", 22e3)));
        conductor.take(new Guard.EndOfTravel(seconds(1)));
        conductor.take(new Work.PlanOver(seconds(1)));
        conductor.take(new Caution.Suspected(seconds(1), Suspicion.MICA, Double.NaN));
        assertEquals(Collections.nCopies(5, Event.LOOK), events);
    }

    @Test
    void whatFollowsASoundOfItsOwnIsNotHeardTwice() {
        conductor.take(new Request.HandsOff(seconds(1), false));
        conductor.take(new Work.WentBack(seconds(2)));
        conductor.take(new Finding.Hinted(seconds(3), Hint.NEGATIVE_GOING, -0.5));
        assertEquals(List.of(), events);
    }

    @Test
    void theEndOfACheckSoundsLikeABeginning() {
        conductor.take(new Request.CheckOver(seconds(1)));
        assertEquals(List.of(Event.BEGIN), events);
    }

    @Test
    void aPlanCanChangeWhatIsSought() {
        conductor.take(start(Seek.PEAK));
        conductor.take(new Said.Command(seconds(1), new Instruction.Find(Seek.DIP)));
        conductor.take(reading(2, 2.0, 1.0, Trend.FALLING));
        assertTrue(aim.liveHertz() < aim.referenceHertz(), "more than the least is farther");
        assertEquals(1, words.size());
    }
}

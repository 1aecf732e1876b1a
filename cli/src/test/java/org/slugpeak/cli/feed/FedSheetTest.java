package org.slugpeak.cli.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.generator.FedGenerator;
import org.slugpeak.bridge.generator.GeneratorNews;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.sim.SimSource;
import org.slugpeak.bridge.sim.Tempo;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.testkit.SimulatedGenerator;
import org.slugpeak.cli.run.SessionRun;
import org.slugpeak.cli.run.SinkOutput;
import org.slugpeak.cli.sheet.SheetGuide;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.GeneratorSetting;
import org.slugpeak.core.generator.LevelUnit;
import org.slugpeak.core.generator.Modulation;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.sheet.InputReach;
import org.slugpeak.core.sheet.SheetPlan;
import org.slugpeak.core.sheet.SheetProgress;

/** A sheet with a generator that obeys at once: what a hand measures at the same set is what it measures. */
class FedSheetTest {

    private final SimulatedGenerator simulated = new SimulatedGenerator(0, 3);
    private final Queue<GeneratorNews> news = new ArrayDeque<>();

    private final class Obeying implements FedGenerator {

        @Override
        public GeneratorReach reach() {
            return new GeneratorReach(
                    true,
                    true,
                    true,
                    10e3,
                    30e6,
                    LevelUnit.DBM.toEmfVolts(-130),
                    LevelUnit.DBM.toEmfVolts(13),
                    LevelUnit.DBM,
                    0);
        }

        @Override
        public void want(GeneratorSetting wanted) {
            news.add(new GeneratorNews.Stands(wanted, simulated.obey(wanted)));
        }

        @Override
        public Optional<GeneratorNews> news() {
            return Optional.ofNullable(news.poll());
        }
    }

    private List<SessionRecord> sheet(boolean fed) throws BridgeException {
        Plan plan = PlanFiles.load("tarnfield-54a", OptionalDouble.empty());
        Conditions conditions = new Conditions(Occasion.BEFORE, 0.4, 3.2, "200 pF", Double.NaN);
        InputReach reach = fed ? InputReach.obeying(1e-7, 1) : InputReach.BY_HAND;
        SheetProgress progress = new SheetProgress(SheetPlan.of(plan, MeterPoint.VOICE_COIL), conditions, reach);
        SheetGuide guide = new SheetGuide(plan.name(), List.of(), MeterPoint.VOICE_COIL, progress);
        SimSource source = SimSource.measuring(plan, false, MeterPoint.VOICE_COIL, 4, Tempo.unlimited());
        GeneratorSetting stood = new GeneratorSetting(1e6, 1e-6, Modulation.NONE, false);
        GeneratorSeat seat = GeneratorSeat.taken(new Feeder(new Obeying(), stood));
        List<SessionRecord> told = new ArrayList<>();
        PeakSettings settings = PeakSettings.defaults();
        SessionRun run = new SessionRun(
                source,
                settings,
                fed ? new FedGuide(guide, seat) : guide,
                () -> new SessionStart(1, Instant.EPOCH, "sim:plan", source.measurand(), settings, "test"),
                List.of(new SinkOutput(told::add), new SinkOutput(source.hand())));
        run.run();
        assertTrue(progress.isOver());
        return told;
    }

    private static List<Figure> figures(List<SessionRecord> told) {
        return told.stream()
                .filter(SheetWork.FigureTaken.class::isInstance)
                .map(it -> ((SheetWork.FigureTaken) it).figure())
                .toList();
    }

    @Test
    void measuresWhatAHandMeasuresAndAsksOnlyForDialAndVolume() throws BridgeException {
        List<SessionRecord> told = sheet(true);
        assertTrue(told.stream()
                .filter(Request.SetInput.class::isInstance)
                .map(Request.SetInput.class::cast)
                .allMatch(it -> it.unasked() || it.setting().handwork().isAtSet()));
        List<Figure> fed = figures(told);
        List<Figure> byHand = figures(sheet(false));
        assertEquals(byHand.size(), fed.size());
        for (int i = 0; i < fed.size(); i++) {
            Figure one = fed.get(i);
            Figure other = byHand.get(i);
            assertEquals(other.kind(), one.kind());
            double apart = switch (one.kind().counts()) {
                case DECIBELS -> one.value() - other.value();
                case VOLTS_EMF -> Decibels.of(one.value() / other.value());
                case HERTZ -> 10 * (one.value() / other.value() - 1);
                case RATIO -> one.value() - other.value();
            };
            assertTrue(Math.abs(apart) < 0.6, one + " and by hand " + other);
        }
    }
}

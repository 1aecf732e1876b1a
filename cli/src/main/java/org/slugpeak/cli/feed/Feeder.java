package org.slugpeak.cli.feed;

import java.util.ArrayDeque;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import org.slugpeak.bridge.generator.FedGenerator;
import org.slugpeak.bridge.generator.GeneratorNews;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.generator.GeneratorMove;
import org.slugpeak.core.generator.GeneratorSetting;
import org.slugpeak.core.generator.Modulation;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;

/**
 * What a generator is wished to do in a session: what steps, checks and turns of the level want becomes one setting, and what it
 * answers becomes records and commands, as a hand would give them. One thread: the session's.
 */
final class Feeder {

    /** Less is nothing that anybody would see. */
    private static final double LEAST_TURN_DB = 1;

    private static final GeneratorMove AS_BEFORE = new GeneratorMove(1, 0);

    private final FedGenerator generator;
    private final double startEmfVolts;
    private final Honesty honesty = new Honesty();
    private final Queue<String> doubts = new ArrayDeque<>();
    private GeneratorSetting wanted;
    private GeneratorSetting newest;
    private GeneratorMove move = AS_BEFORE;
    private Optional<CheckKind> checking = Optional.empty();
    private boolean moveDue;
    private boolean turningDue;
    private OptionalDouble turnedFromEmfVolts = OptionalDouble.empty();
    private double standsAtEmfVolts;
    private boolean away;
    private String injection = "";
    private Optional<String> refusal = Optional.empty();

    /** With how it stood, its output off; no signal is given before somebody wants one. */
    Feeder(FedGenerator generator, GeneratorSetting stood) {
        this.generator = generator;
        this.wanted = stood;
        this.newest = stood;
        this.startEmfVolts = stood.emfVolts();
        this.standsAtEmfVolts = stood.emfVolts();
    }

    /** As a step of a plan wants it; at another place it begins with little signal again. */
    void feed(Setup setup) {
        Modulation modulation = Modulation.of(setup.modulation()).orElse(Modulation.NONE);
        wanted = wanted.withFrequency(setup.generatorHz().orElseThrow())
                .withModulation(modulation)
                .switched(true);
        if (!setup.injection().equals(injection)) {
            injection = setup.injection();
            wanted = wanted.withEmf(startEmfVolts);
        }
        wish();
    }

    void frequency(double hz) {
        wanted = wanted.withFrequency(hz).switched(true);
        wish();
    }

    /** As a sheet wants it. */
    void input(InputSetting setting) {
        wanted = new GeneratorSetting(
                setting.frequencyHz(),
                generator.reach().nearestEmfVolts(setting.emfVolts()),
                setting.modulated() ? Modulation.TEST_TONE : Modulation.NONE,
                true);
        wish();
    }

    private void wish() {
        GeneratorSetting moved = wanted.withFrequency(wanted.frequencyHz() + move.offsetHz());
        boolean off = move.levelFactor() == 0;
        newest = off ? moved.switched(false) : moved.withEmf(moved.emfVolts() * move.levelFactor());
        generator.want(newest);
    }

    /** Whether a move that a check asks for is made from here. */
    boolean makes(Request.Asked it) {
        return it.check()
                .generatorMove(it.move(), it.skirtHz())
                .filter(generator.reach()::makes)
                .isPresent();
    }

    void checkBegun(CheckKind kind) {
        checking = Optional.of(kind);
    }

    void asked(Request.Asked it) {
        if (makes(it)) {
            move = it.check().generatorMove(it.move(), it.skirtHz()).orElseThrow();
            moveDue = true;
            wish();
        }
    }

    /** A check of the level that nobody asked to take back leaves the lower level; any other is put back. */
    void checkOver() {
        boolean staysLower = checking.equals(Optional.of(CheckKind.LEVEL)) && move.levelFactor() > 0;
        wanted = staysLower ? wanted.withEmf(wanted.emfVolts() * move.levelFactor()) : wanted;
        putBack();
    }

    void putBack() {
        checking = Optional.empty();
        endMove();
    }

    private void endMove() {
        boolean deviates = !move.equals(AS_BEFORE);
        move = AS_BEFORE;
        moveDue = false;
        if (deviates) {
            wish();
        }
    }

    private boolean turns() {
        return generator.reach().setsLevel() && checking.isEmpty();
    }

    /** Whether a turn is made from here, and not left to a hand since the generator has come to its end. */
    boolean turnsBy(double factor) {
        return turns() && Decibels.apart(turned(factor), wanted.emfVolts()) >= LEAST_TURN_DB;
    }

    private double turned(double factor) {
        return generator.reach().nearestEmfVolts(wanted.emfVolts() * factor);
    }

    /** Somebody, a hand or the servo, has announced a turn of the level. */
    void turn(double factor) {
        if (turns() && turned(factor) != wanted.emfVolts()) {
            turningDue = true;
            turnedFromEmfVolts = OptionalDouble.of(turnedFromEmfVolts.orElse(standsAtEmfVolts));
            wanted = wanted.withEmf(turned(factor));
            wish();
        }
    }

    /** What the level watch made of a turn; where that is not what the generator says, it is told. */
    void judge(double readDb) {
        honesty.judge(readDb).ifPresent(doubts::add);
    }

    void lawIsKnown() {
        honesty.lawIsKnown();
    }

    Optional<String> refusal() {
        return refusal;
    }

    /** Takes what the generator has answered. */
    void serve(Analysis analysis, SessionControl control) {
        for (String doubt = doubts.poll(); doubt != null; doubt = doubts.poll()) {
            String detail = doubt;
            analysis.tell(at -> new Request.GeneratorFails(at, false, detail));
        }
        if (turningDue) {
            turningDue = false;
            analysis.command(new Instruction.Level(LevelCommand.turning()));
        }
        for (Optional<GeneratorNews> news = generator.news(); news.isPresent(); news = generator.news()) {
            news.get().match(new Answered(analysis, control));
        }
    }

    private final class Answered implements GeneratorNews.Matcher {

        private final Analysis analysis;
        private final SessionControl control;

        Answered(Analysis analysis, SessionControl control) {
            this.analysis = analysis;
            this.control = control;
        }

        @Override
        public void stands(GeneratorNews.Stands it) {
            GeneratorSetting real = it.real();
            if (away) {
                comeBack(real);
            }
            // One more turn that was wished meanwhile is told with it when that stands.
            if (turnedFromEmfVolts.isPresent() && real.on() && it.wanted().equals(newest)) {
                double factor = real.emfVolts() / turnedFromEmfVolts.getAsDouble();
                turnedFromEmfVolts = OptionalDouble.empty();
                honesty.says(factor);
                wanted = wanted.withEmf(real.emfVolts());
                analysis.command(new Instruction.Level(LevelCommand.turned(factor)));
            }
            if (move.levelFactor() == 1 && real.on()) {
                standsAtEmfVolts = real.emfVolts();
            }
            analysis.tell(at -> new Request.GeneratorStands(at, real.frequencyHz(), real.on() ? real.emfVolts() : 0));
            if (moveDue) {
                moveDue = false;
                analysis.command(new Instruction.Level(LevelCommand.done()));
            }
        }

        /** What was being checked is checked anew, since nobody knows what was read meanwhile. */
        private void comeBack(GeneratorSetting real) {
            away = false;
            double factor = real.on() ? real.emfVolts() / standsAtEmfVolts : 1;
            analysis.command(new Instruction.Level(LevelCommand.turned(factor)));
            checking.ifPresent(kind -> analysis.command(new Instruction.Level(LevelCommand.check(kind))));
        }

        @Override
        public void fails(GeneratorNews.Fails it) {
            analysis.tell(at -> new Request.GeneratorFails(at, it.gone(), it.problem()));
            if (it.gone() && !away) {
                away = true;
                turnedFromEmfVolts = OptionalDouble.empty();
                analysis.command(new Instruction.Level(LevelCommand.away()));
                endMove();
            }
            if (!it.gone()) {
                refusal = Optional.of(it.problem());
                control.quit(EndReason.Known.GENERATOR_ASTRAY);
            }
        }
    }
}

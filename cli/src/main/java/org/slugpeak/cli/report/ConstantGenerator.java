package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.HeardScale;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;

/**
 * Puts the levels of a session on one scale, as if nobody had touched the generator: every turn of it that the readings followed is
 * taken out again, by the law of the detector where that was measured. A scale lasts as long as levels can be compared; at another meter point, with
 * another resting reading or law and with another thing sought a new one begins. Around a zero the scale is the unit of the readings. One thread at a time.
 */
final class ConstantGenerator implements FamilyListener {

    /** Stands for the decibels of nothing; far below what any meter shows. */
    static final double NOTHING_DB = -400;

    private final boolean isDb;
    private final List<GeneratorTurn> turns = new ArrayList<>();
    private final HeardScale heard = new HeardScale();
    private int scale;
    private boolean signCounts;
    private double changeDb;
    private boolean checking;

    /**
     * Begins with the generator as it stands.
     *
     * @param unit of the levels
     * @param signCounts whether a zero is sought first
     */
    ConstantGenerator(String unit, boolean signCounts) {
        this.isDb = Gain.isDb(unit);
        this.signCounts = signCounts;
    }

    /** Whether a check moves the generator just now, so that readings say nothing of the set. */
    boolean isChecking() {
        return checking;
    }

    /** By how much the generator is above where it stood at the beginning of the scale, dB of readings. */
    double changeDb() {
        return changeDb;
    }

    /** Every turn so far that the readings followed. */
    List<GeneratorTurn> turns() {
        return turns;
    }

    /** A level on the present scale; NaN stays NaN. */
    ScaledLevel of(double level) {
        return new ScaledLevel(scale, signCounts, signCounts ? heard.scale().aboveRest(level) : dB(level));
    }

    private double dB(double level) {
        double levelDb = isDb ? level : Decibels.of(Math.abs(heard.scale().straight(level)));
        return Double.isNaN(levelDb) ? Double.NaN : Math.max(NOTHING_DB, levelDb - changeDb);
    }

    /** One sigma of a level, dB; NaN where it has none. */
    double spreadDb(double level, double sigma) {
        if (isDb) {
            return sigma;
        }
        double further = heard.scale().straight(level + Math.copySign(sigma, level));
        double spreadDb = Decibels.of(Math.abs(further / heard.scale().straight(level)));
        return Double.isFinite(spreadDb) ? spreadDb : Double.NaN;
    }

    /** How many dB one unit is at a level, by a step of a ten-thousandth of it; NaN where it has none. */
    double dbPerUnit(double level) {
        double step = isDb ? 1 : Math.abs(level) / 1e4;
        return spreadDb(level, step) / step;
    }

    @Override
    public void caution(Caution it) {
        if (it instanceof Caution.Checked checked && checked.check() == CheckKind.REST) {
            heard.take(it);
            begin();
        }
    }

    @Override
    public void curveWork(CurveWork it) {
        heard.take(it);
        if (it instanceof CurveWork.LawStep) {
            begin();
        }
    }

    @Override
    public void request(Request it) {
        if (it instanceof Request.GeneratorChanged changed) {
            changeDb += changed.changeDb();
            turns.add(new GeneratorTurn(changed.tNanos(), changed.changeDb()));
        } else if (it instanceof Request.Asked) {
            checking = true;
        } else if (it instanceof Request.CheckOver || it instanceof Request.CheckDropped) {
            checking = false;
        }
    }

    /** A log tells the moves of a check in words. */
    @Override
    public void logged(Logged it) {
        if (it.topic() == Logged.Topic.ASKED) {
            checking = true;
        }
    }

    @Override
    public void said(Said it) {
        if (it instanceof Said.Command command) {
            if (command.instruction() instanceof Instruction.Level level) {
                level(command, level.command());
            } else if (command.instruction() instanceof Instruction.Find find
                    && find.seek().signCounts() != signCounts) {
                signCounts = !signCounts;
                begin();
            }
        }
    }

    private void level(Said.Command said, LevelCommand command) {
        if (command.verb() == LevelCommand.Verb.POINT) {
            at(said);
        } else if (command.verb() == LevelCommand.Verb.CANCEL) {
            checking = false;
        }
    }

    private void at(Said.Command command) {
        Optional<MeterPoint> before = heard.scale().point();
        heard.take(command);
        if (before.isPresent() && !before.equals(heard.scale().point())) {
            begin();
        }
    }

    private void begin() {
        scale++;
        changeDb = 0;
    }
}

package org.slugpeak.cli.feed;

import java.util.Optional;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.GuideAround;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.word.Coded;

/**
 * Whoever leads, with a generator that obeys: what would be asked of a hand at the generator is done, and is not asked. One thread: the
 * session's.
 */
public final class FedGuide extends GuideAround {

    private final GeneratorSeat seat;
    private final Hearing hearing = new Hearing();

    /**
     * A guide with a generator.
     *
     * @param inner who leads
     * @param seat where the generator is, once the session has begun
     */
    public FedGuide(Guide inner, GeneratorSeat seat) {
        super(inner);
        this.seat = seat;
    }

    @Override
    public void take(SessionRecord record) {
        super.take(record);
        record.tellFamily(hearing);
    }

    @Override
    public Optional<SessionRecord> passedOn(SessionRecord record) {
        boolean doneHere = seat.feeder()
                .map(feeder -> (record instanceof Request.Asked asked && feeder.makes(asked))
                        || (record instanceof Request.CutGenerator cut && feeder.turnsBy(cut.factor())))
                .orElse(false);
        return doneHere ? Optional.empty() : super.passedOn(record);
    }

    @Override
    public void lead(Analysis analysis, SessionControl control) {
        super.lead(analysis, control);
        seat.serve(analysis, control);
    }

    /** What records want of the generator. */
    private final class Hearing implements FamilyListener {

        @Override
        public void request(Request it) {
            if (it instanceof Request.Asked asked) {
                seat.wish(feeder -> feeder.asked(asked));
            } else if (it instanceof Request.CheckDropped) {
                seat.wish(Feeder::putBack);
            } else if (it instanceof Request.CheckOver) {
                seat.wish(Feeder::checkOver);
            } else if (it instanceof Request.SetGenerator set) {
                seat.wish(feeder -> feeder.frequency(set.hz()));
            } else if (it instanceof Request.SetInput set) {
                seat.wish(feeder -> feeder.input(set.setting()));
            } else if (it instanceof Request.GeneratorChanged changed) {
                seat.wish(feeder -> feeder.judge(changed.changeDb()));
            } else if (it instanceof Request.GeneratorUnchanged) {
                seat.wish(feeder -> feeder.judge(0));
            }
        }

        @Override
        public void curveWork(CurveWork it) {
            if (it instanceof CurveWork.LawStep) {
                seat.wish(Feeder::lawIsKnown);
            }
        }

        @Override
        public void said(Said it) {
            if (it instanceof Said.Command said && said.instruction() instanceof Instruction.Level level) {
                command(level.command());
            }
        }

        private void command(LevelCommand command) {
            if (command.verb() == LevelCommand.Verb.CHECK) {
                CheckKind kind = Coded.find(CheckKind.class, command.detail()).orElseThrow();
                seat.wish(feeder -> feeder.checkBegun(kind));
            } else if (command.verb() == LevelCommand.Verb.CUT) {
                seat.wish(feeder -> feeder.turn(command.number()));
            } else if (command.verb() == LevelCommand.Verb.CANCEL) {
                seat.wish(Feeder::putBack);
            }
        }
    }
}

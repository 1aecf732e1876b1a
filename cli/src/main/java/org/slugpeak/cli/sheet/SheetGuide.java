package org.slugpeak.cli.sheet;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.cli.words.SheetPhrase;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Untimed;
import org.slugpeak.core.session.Work;
import org.slugpeak.core.sheet.SheetProgress;

/** Leads a session through a receiver's sheet. One thread: the session's. */
public final class SheetGuide implements Guide {

    private static final SheetConcerns CONCERNS = new SheetConcerns();

    private final String set;
    private final List<String> safety;
    private final MeterPoint point;
    private final SheetProgress progress;
    private int measured;
    private int missing;
    private boolean finished;

    /**
     * A guide at the beginning of a sheet.
     *
     * @param set name of the plan
     * @param safety safety questions with their answers, for the record
     * @param point where the meter stands
     * @param progress what is to be measured
     */
    public SheetGuide(String set, List<String> safety, MeterPoint point, SheetProgress progress) {
        this.set = set;
        this.safety = List.copyOf(safety);
        this.point = point;
        this.progress = progress;
    }

    @Override
    public void begin(Analysis analysis) {
        analysis.tell(at -> new Work.PlanBegun(at, set));
        safety.forEach(answer -> analysis.tell(at -> new Said.Answer(at, answer)));
        analysis.command(new Instruction.Level(LevelCommand.at(point)));
        progress.nextNews().ifPresent(analysis::tell);
    }

    @Override
    public void take(SessionRecord record) {
        progress.take(record);
        if (record instanceof SheetWork.FigureTaken taken) {
            boolean known = taken.figure().hasValue();
            measured += known ? 1 : 0;
            missing += known ? 0 : 1;
        }
    }

    @Override
    public Optional<SessionRecord> passedOn(SessionRecord record) {
        return ofSheet(record);
    }

    /**
     * What of a record concerns anybody while a sheet is filled: nothing is turned to a peak, and the level is meant to change.
     *
     * @param record of such a session, live or played again
     * @return goes to log, screen and ear; empty where nothing does
     */
    public static Optional<SessionRecord> ofSheet(SessionRecord record) {
        return Guide.uncompared(record, CONCERNS);
    }

    @Override
    public void lead(Analysis analysis, SessionControl control) {
        for (Optional<Untimed> news = progress.nextNews(); news.isPresent(); news = progress.nextNews()) {
            analysis.tell(news.get());
        }
        progress.takeCheck().ifPresent(check -> analysis.command(new Instruction.Level(LevelCommand.check(check))));
        if (progress.isOver() && !finished) {
            finished = true;
            control.quit(EndReason.Known.SHEET_COMPLETE);
        }
    }

    /**
     * What came of it, for whoever has watched nothing.
     *
     * @param log where the session was kept
     * @return one line
     */
    public String outcome(Optional<Path> log) {
        String kept = log.map(file -> AskPhrase.RECORD_IN.of(file)).orElseGet(AskPhrase.NO_RECORD::of);
        return progress.isOver()
                ? SheetPhrase.OUTCOME.of(measured, missing, kept)
                : SheetPhrase.ENDED_BEFORE.of(measured, kept);
    }

    @Override
    public void counted(Analysis analysis, double hz) {
        OptionalDouble wantedHz = progress.wantedHz();
        if (wantedHz.isPresent()) {
            analysis.tell(at -> new Said.Counted(at, hz, wantedHz.getAsDouble(), false));
        } else {
            analysis.note(AskPhrase.COUNTER_READS.of(hz / 1e3));
        }
    }

    @Override
    public void next(Analysis analysis) {
        progress.next();
    }

    @Override
    public void skip(Analysis analysis) {
        progress.skip();
    }
}

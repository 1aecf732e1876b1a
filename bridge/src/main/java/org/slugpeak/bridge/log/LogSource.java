package org.slugpeak.bridge.log;

import java.nio.file.Path;
import java.util.Optional;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Work;

/**
 * Plays a session log again: delivers what the source and the user did then (readings, changes of the link, marks, the
 * beginning of each adjuster), in the same order. What was concluded from it then is left out, so that an
 * {@link org.slugpeak.core.session.Analysis} with the settings of {@link #start} concludes it again, bit for bit. What a sheet
 * found is told as it stands: that a setting stood was a person's word, which no reading has. A line that is no record, and a torn
 * last line, are told as garbled.
 *
 * <p>One thread at a time.
 */
public final class LogSource implements ReadingSource {

    private static final int RECORDS_A_PASS = 1024;

    private final String name;
    private final LogReader reader;
    private Optional<SourceListener> listener = Optional.empty();
    private Optional<LogEnding> ending = Optional.empty();
    private EndReason endReason = EndReason.Known.BROKEN_OFF;

    private LogSource(Path file) throws BadLog {
        this.name = file.toString();
        this.reader = LogReader.open(file, this::badLine);
    }

    /**
     * Opens a log.
     *
     * @param file a session log
     * @return the source, at its first record
     * @throws BadLog if it cannot be opened, is no session log, or is one of a later version
     */
    public static LogSource open(Path file) throws BadLog {
        return new LogSource(file);
    }

    /**
     * What was recorded, with which settings.
     *
     * @return the first record
     */
    public SessionStart start() {
        return reader.start();
    }

    /**
     * How the log ends.
     *
     * @return empty before {@link #poll} has come to the end
     */
    public Optional<LogEnding> ending() {
        return ending;
    }

    @Override
    public Measurand measurand() {
        return start().measurand();
    }

    @Override
    public SourceDescription description() {
        return new SourceDescription.Log(name, start().startedAt(), start().source());
    }

    @Override
    public Progress poll(long waitNanos, SourceListener hears) throws BadLog {
        if (ending.isPresent()) {
            return Progress.ENDED;
        }
        listener = Optional.of(hears);
        for (int i = 0; i < RECORDS_A_PASS; i++) {
            Optional<LogEntry> entry = reader.next();
            if (entry.isEmpty()) {
                end(hears);
                return Progress.ENDED;
            }
            entry.get().record().tellFamily(new Playing(hears));
        }
        return Progress.MORE;
    }

    /** As the log says; a log without an end record was broken off. */
    @Override
    public EndReason endReason() {
        return endReason;
    }

    @Override
    public void close() {
        reader.close();
    }

    private void badLine(long line, String problem) {
        listener.ifPresent(hears -> hears.garbled("line " + line, problem));
    }

    private void end(SourceListener hears) {
        LogEnding found = reader.ending();
        ending = Optional.of(found);
        if (found instanceof LogEnding.Truncated truncated && !truncated.text().isEmpty()) {
            hears.garbled("line " + truncated.line(), "is cut off; everything before it was read");
        }
    }

    /** What came from outside is played again. */
    private final class Playing implements FamilyListener {

        private final SourceListener hears;

        Playing(SourceListener hears) {
            this.hears = hears;
        }

        @Override
        public void frame(Frame it) {
            if (it instanceof ReadingTaken taken) {
                hears.reading(taken.reading());
            } else if (it instanceof SessionEnd end) {
                endReason = end.reason();
            }
        }

        @Override
        public void link(Link it) {
            if (it instanceof Link.Changed changed) {
                hears.link(changed.tNanos(), changed.state(), changed.detail());
            } else if (it instanceof Link.Broken broken) {
                hears.notice(broken.tNanos(), broken.notice(), broken.detail());
            }
        }

        @Override
        public void said(Said it) {
            if (it instanceof Said.Note note) {
                hears.note(note.text());
            } else if (it instanceof Said.Command command) {
                hears.command(command.instruction());
            }
        }

        @Override
        public void work(Work it) {
            if (it instanceof Adjuster adjuster) {
                adjuster(adjuster);
            }
        }

        @Override
        public void sheetWork(SheetWork it) {
            hears.remark(it::at);
        }

        /** Steps of the detector's law come of a check, which is made again. */
        @Override
        public void curveWork(CurveWork it) {
            if (!(it instanceof CurveWork.LawStep)) {
                hears.remark(it::at);
            }
        }

        /** Which frequency a curve's generator goes to: nobody is asked again, but whoever leads is told that nothing is turned. */
        @Override
        public void logged(Logged it) {
            if (it.topic() == Logged.Topic.SET_GENERATOR) {
                hears.remark(at -> new Logged(at, it.topic(), it.amount()));
            }
        }

        private void adjuster(Adjuster it) {
            if (it.action() == Adjuster.Action.BEGIN) {
                hears.nextAdjuster(it.name());
            } else {
                hears.adjusterEnded(it.action());
            }
        }
    }
}

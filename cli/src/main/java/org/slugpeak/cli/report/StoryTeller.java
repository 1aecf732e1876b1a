package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.cli.words.ReportPhrase;
import org.slugpeak.core.curve.CurveRecords;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.GainSums;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Work;

/** Gathers the records of one session for a report. One thread at a time. */
public final class StoryTeller {

    private static final Lasting LASTING = new Lasting();

    /** Nobody reads more, and a faulty link may bring one a line. */
    private static final int MOST_NOTICES = 1000;

    private final String name;
    private final SessionStart start;
    private final ConstantGenerator scale;
    private final LevelGatherer levels;
    private final List<Turn> turns = new ArrayList<>();
    private final Map<String, Notice> notices = new LinkedHashMap<>();
    private final Remaining remaining = new Remaining();
    private final List<String> safety = new ArrayList<>();
    private final CurveRecords curve = new CurveRecords();
    private final List<DialError> dials = new ArrayList<>();
    private final SheetGatherer sheets = new SheetGatherer();
    private final Map<String, Integer> rounds = new HashMap<>();
    private final Gathering gathering = new Gathering();
    private final GainSums sums;
    private String plan = "";
    private Facts facts = Facts.none();
    private String present = "";
    private Optional<Adjuster> begun = Optional.empty();
    private ScaledLevel before = new ScaledLevel(0, false, Double.NaN);
    private double beforeDbPerUnit = Double.NaN;
    private double bestSigma = Double.NaN;
    private double bestSigmaDb = Double.NaN;
    private double bestSoFar = Double.NaN;
    private long askedNanos;

    /**
     * Begins a story.
     *
     * @param name of the log
     * @param start its first record
     */
    public StoryTeller(String name, SessionStart start) {
        this.name = name;
        this.start = start;
        this.scale = new ConstantGenerator(
                start.measurand().unit(), start.settings().seek().signCounts());
        this.sums = new GainSums(start.settings().seek());
        this.levels = new LevelGatherer(start.stepped());
    }

    /**
     * Takes the next line of the log.
     *
     * @param entry with its words
     */
    public void take(LogEntry entry) {
        SessionRecord record = entry.record();
        record.tellFamily(scale);
        curve.take(record);
        sums.take(record);
        record.tellFamily(gathering);
        Optional<String> words = record.matchFamily(new StoryLine(entry.text(), present));
        String kind = entry.word().replace('-', ' ');
        words.ifPresent(it -> notice(new Notice(record.tNanos(), kind, it, 1, record.matchFamily(LASTING))));
        remaining.take(entry, words);
    }

    /**
     * What has been gathered.
     *
     * @param ending how the log ends, one line
     * @return the story
     */
    public SessionStory story(String ending) {
        closeOpenTurn();
        return new SessionStory(
                name,
                start,
                ending,
                plan,
                facts,
                remaining.warnings(),
                safety,
                levels.levels(),
                scale.turns(),
                turns,
                sums.gains(),
                List.copyOf(notices.values()),
                curve.points().stream()
                        .map(point -> new CurvePoint(point.hz(), point.level()))
                        .toList(),
                dials,
                sheets.sheets());
    }

    /** Where a log says nothing of an adjuster's end, the next beginning or the end of the log is taken for it. */
    private void closeOpenTurn() {
        begun.ifPresent(it -> addTurn(it, Optional.empty(), levels.lastSmoothed(), Double.NaN));
    }

    /** What the log says of a gain is believed, even that there is none; where it does not say how it ended, the levels are compared. */
    private void addTurn(Adjuster from, Optional<Adjuster.Action> ending, double after, double gainDb) {
        double start = before.value();
        double end = scale.of(after).value();
        boolean same = scale.of(after).scale() == before.scale();
        double gain = before.inUnit() || !same ? Double.NaN : ending.isPresent() ? gainDb : end - start;
        double zero = before.inUnit() ? 0 : levels.courses().found();
        turns.add(new Turn(
                from.name(),
                rounds.merge(from.name(), 1, Integer::sum),
                from.tNanos(),
                levels.lastNanos(from.tNanos()),
                before.inUnit(),
                start - zero,
                bestSoFar - zero,
                Double.isNaN(gain) ? end - zero : start + gain - zero,
                scale.changeDb(),
                gain,
                bestSigmaDb,
                new TurnLimits(bestSigma, beforeDbPerUnit, scale.dbPerUnit(after)),
                ending));
        begun = Optional.empty();
        present = "";
    }

    /** Something that the report tells by itself; the same again is counted. */
    private void notice(Notice told) {
        boolean tooMany = notices.size() >= MOST_NOTICES && !notices.containsKey(told.kind() + told.text());
        Notice notice = tooMany ? new Notice(told.tNanos(), "more", ReportPhrase.NOT_ONE_BY_ONE.of(), 1, false) : told;
        notices.merge(notice.kind() + notice.text(), notice, (old, same) -> old.again());
    }

    /** What the report shows in tables and drawings. */
    private final class Gathering implements FamilyListener {

        @Override
        public void frame(Frame it) {
            if (it instanceof ReadingTaken taken) {
                levels.take(taken, scale.of(taken.reading().value()), !scale.isChecking());
                bestSoFar = scale.of(taken.best()).value();
                bestSigma = taken.bestSigma();
                bestSigmaDb = before.inUnit() ? Double.NaN : scale.spreadDb(taken.best(), taken.bestSigma());
            }
        }

        @Override
        public void request(Request it) {
            if (it instanceof Request.CutGenerator cut) {
                askedNanos = cut.tNanos();
            } else if (it instanceof Request.GeneratorChanged changed) {
                levels.courses().generatorTurned(changed.tNanos(), askedNanos);
            }
        }

        @Override
        public void said(Said it) {
            if (it instanceof Said.Answer answer) {
                safety.add(answer.text());
            } else if (it instanceof Said.Note note) {
                facts = facts.with(Facts.ofNote(note.text()));
            } else if (it instanceof Said.Command given && given.instruction() instanceof Instruction.TakeBack) {
                levels.takeBack();
            }
        }

        @Override
        public void sheetWork(SheetWork it) {
            sheets.take(it);
        }

        @Override
        public void work(Work it) {
            if (it instanceof Adjuster change) {
                adjuster(change);
            } else if (it instanceof Work.PlanBegun begins) {
                plan = begins.name();
            } else if (it instanceof Work.DialNoted noted) {
                dials.add(new DialError(noted.signalHz(), noted.errorHz(), noted.after()));
            }
        }
    }

    private void adjuster(Adjuster it) {
        if (it.action() == Adjuster.Action.BEGIN) {
            closeOpenTurn();
            begin(it);
        } else {
            if (begun.isEmpty()) {
                begin(it);
            }
            addTurn(begun.orElse(it), Optional.of(it.action()), it.after(), it.gainDb());
            levels.courses().end(it.tNanos());
        }
    }

    private void begin(Adjuster it) {
        begun = Optional.of(it);
        present = it.name();
        before = scale.of(it.before());
        levels.courses().begin(it.tNanos(), before);
        beforeDbPerUnit = scale.dbPerUnit(it.before());
        bestSigma = Double.NaN;
        bestSigmaDb = Double.NaN;
        bestSoFar = Double.NaN;
    }
}

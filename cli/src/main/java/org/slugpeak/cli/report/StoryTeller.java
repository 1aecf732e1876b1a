package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionStart;

/** Gathers the records of one session for a report. One thread at a time. */
public final class StoryTeller {

    /** Nobody reads more, and a faulty link may bring one a line. */
    private static final int MOST_NOTICES = 1000;

    private final String name;
    private final SessionStart start;
    private final LevelGatherer levels;
    private final List<Turn> turns = new ArrayList<>();
    private final Map<String, Notice> notices = new LinkedHashMap<>();
    private final List<String> safety = new ArrayList<>();
    private final Map<Double, CurvePoint> curve = new TreeMap<>();
    private final List<DialError> dials = new ArrayList<>();
    private final Map<String, Integer> rounds = new HashMap<>();
    private String plan = "";
    private String present = "";
    private Optional<Adjuster> begun = Optional.empty();
    private double bestSigma = Double.NaN;
    private double bestSoFar = Double.NaN;

    /**
     * Begins a story.
     *
     * @param name of the log
     * @param start its first record
     */
    public StoryTeller(String name, SessionStart start) {
        this.name = name;
        this.start = start;
        this.levels = new LevelGatherer(start.measurand().unit(), start.stepped());
    }

    /**
     * Takes the next line of the log.
     *
     * @param entry with its words
     */
    public void take(LogEntry entry) {
        entry.record().matchFamily(new StoryLine(this, entry.word(), entry.text()));
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
                safety,
                levels.levels(),
                turns,
                List.copyOf(notices.values()),
                List.copyOf(curve.values()),
                dials);
    }

    /** Where a log says nothing of an adjuster's end, the next beginning or the end of the log is taken for it. */
    private void closeOpenTurn() {
        begun.ifPresent(it -> addTurn(it, Optional.empty(), levels.lastSmoothed(), Double.NaN));
    }

    private void addTurn(Adjuster from, Optional<Adjuster.Action> ending, double after, double gainDb) {
        String unit = start.measurand().unit();
        double gain = Double.isNaN(gainDb) ? Gain.between(from.before(), after, unit) : gainDb;
        boolean meaningful = !start.settings().seek().signCounts();
        turns.add(new Turn(
                from.name(),
                rounds.merge(from.name(), 1, Integer::sum),
                from.tNanos(),
                levels.lastNanos(from.tNanos()),
                from.before(),
                bestSoFar,
                after,
                meaningful ? gain : Double.NaN,
                Gain.spread(bestSigma, bestSoFar, unit),
                ending));
        begun = Optional.empty();
        present = "";
    }

    /** Something that the report tells by itself; the same again is counted. */
    void notice(long tNanos, String kind, String text) {
        boolean tooMany = notices.size() >= MOST_NOTICES && !notices.containsKey(kind + text);
        Notice notice =
                tooMany ? new Notice(tNanos, "more", "not told one by one", 1) : new Notice(tNanos, kind, text, 1);
        notices.merge(notice.kind() + notice.text(), notice, (old, same) -> old.again());
    }

    /** The adjuster that is being set, for what is said meanwhile; empty where none is. */
    String present() {
        return present;
    }

    void reading(ReadingTaken it) {
        levels.take(it);
        bestSoFar = it.best();
        bestSigma = it.bestSigma();
    }

    void takeBack() {
        levels.takeBack();
    }

    void adjuster(Adjuster it) {
        if (it.action() == Adjuster.Action.BEGIN) {
            closeOpenTurn();
            begun = Optional.of(it);
            present = it.name();
            bestSigma = Double.NaN;
            bestSoFar = Double.NaN;
        } else {
            Adjuster from = begun.orElse(it);
            addTurn(from, Optional.of(it.action()), it.after(), it.gainDb());
        }
    }

    void plan(String name) {
        plan = name;
    }

    void safety(String answer) {
        safety.add(answer);
    }

    void point(CurvePoint point) {
        curve.put(point.hz(), point);
    }

    void dial(DialError point) {
        dials.add(point);
    }
}

package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Mark;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.StepCommand;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;

/** Gathers the records of one session for a report. One thread at a time. */
public final class StoryTeller implements RecordSink {

    /** Marks that carry a command to the analysis are no notes of the user. */
    private static final Pattern COMMAND = Pattern.compile("(level|seek|steps): ");

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
    private final Notes notes = new Notes();
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

    @Override
    public void take(SessionRecord record) {
        record.match(notes);
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

    private void notice(long tNanos, String kind, String text) {
        boolean tooMany = notices.size() >= MOST_NOTICES && !notices.containsKey(kind + text);
        Notice notice =
                tooMany ? new Notice(tNanos, "more", "not told one by one", 1) : new Notice(tNanos, kind, text, 1);
        notices.merge(notice.kind() + notice.text(), notice, (old, same) -> old.again());
    }

    /** One method for each kind of record. */
    private final class Notes implements SessionRecord.Matcher<Boolean> {

        @Override
        public Boolean sessionStart(SessionStart it) {
            return true;
        }

        @Override
        public Boolean passed(Passed it) {
            return true;
        }

        @Override
        public Boolean returned(Returned it) {
            return true;
        }

        @Override
        public Boolean held(Held it) {
            return true;
        }

        @Override
        public Boolean twoPeaks(TwoPeaks it) {
            notice(
                    it.tNanos(),
                    "two peaks",
                    String.format(Locale.ROOT, "two maxima in one travel, %.1f dB between them%s", it.dipDb(), at()));
            return true;
        }

        @Override
        public Boolean noPeak(NoPeak it) {
            notice(it.tNanos(), "no peak", it.reason().code().replace('-', ' ') + at());
            return true;
        }

        @Override
        public Boolean overload(Overload it) {
            notice(it.tNanos(), "overload", it.cause().code().replace('-', ' ') + ": " + it.advice() + at());
            return true;
        }

        @Override
        public Boolean overloadCleared(OverloadCleared it) {
            return true;
        }

        @Override
        public Boolean weak(Weak it) {
            notice(it.tNanos(), "weak", it.advice() + at());
            return true;
        }

        @Override
        public Boolean drift(Drift it) {
            notice(
                    it.tNanos(),
                    "drift",
                    String.format(
                            Locale.ROOT,
                            "the reading moves by %+.2g %s/min with nothing turned",
                            it.perMinute(),
                            it.unit()));
            return true;
        }

        @Override
        public Boolean link(Link it) {
            String detail = it.detail().isEmpty() ? "" : ": " + it.detail();
            notice(it.tNanos(), "link", it.state().code() + detail);
            return true;
        }

        @Override
        public Boolean mark(Mark it) {
            if (StepCommand.isUndo(it.text())) {
                levels.takeBack();
            }
            if (!COMMAND.matcher(it.text()).lookingAt()) {
                notice(it.tNanos(), "mark", it.text());
            }
            return true;
        }

        @Override
        public Boolean adjuster(Adjuster it) {
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
            return true;
        }

        @Override
        public Boolean advice(Advice it) {
            switch (it.topic()) {
                case "turn", "hands-off", "plan-over", "back", "set-generator", "curve-over", "ask", "check-over" -> {
                    // Directions of a guided alignment: they were for the moment.
                }
                case "plan" -> plan = it.text();
                case "safety" -> safety.add(it.text());
                case "curve-point" -> addCurvePoint(it);
                case DialError.BEFORE, DialError.AFTER -> DialError.of(it).ifPresent(dials::add);
                default -> notice(it.tNanos(), it.topic().replace('-', ' '), it.text() + at());
            }
            return true;
        }

        @Override
        public Boolean readingTaken(ReadingTaken it) {
            levels.take(it);
            bestSoFar = it.best();
            bestSigma = it.bestSigma();
            return true;
        }

        @Override
        public Boolean sessionEnd(SessionEnd it) {
            return true;
        }

        private String at() {
            return present.isEmpty() ? "" : " (" + present + ")";
        }

        private void addCurvePoint(Advice it) {
            Numbers.parsed(it.text()).ifPresent(hz -> curve.put(hz, new CurvePoint(hz, it.amount())));
        }
    }
}

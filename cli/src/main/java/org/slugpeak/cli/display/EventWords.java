package org.slugpeak.cli.display;

import java.util.Locale;
import java.util.Optional;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.plan.Topics;
import org.slugpeak.core.reading.Rounded;
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
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SeekCommand;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.StepCommand;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;

/** Says each event in one short sentence; a plain reading is no event. One thread at a time. */
final class EventWords implements SessionRecord.Matcher<Optional<String>> {

    private Seek seek = Seek.PEAK;
    private String unit = "";

    @Override
    public Optional<String> sessionStart(SessionStart it) {
        seek = it.settings().seek();
        unit = it.measurand().unit();
        return say(
                "%s from %s, looking for a %s%s",
                it.measurand().quantity(), it.source(), seek.code(), words().nearer());
    }

    @Override
    public Optional<String> passed(Passed it) {
        return Optional.of(it.back()
                .map(back -> words().stepsBack(back, it.dropDb(), unit))
                .orElseGet(() -> words().past(it.dropDb())));
    }

    private SeekWords words() {
        return SeekWords.of(seek);
    }

    @Override
    public Optional<String> returned(Returned it) {
        return Optional.of(words().returned(it.lossDb()));
    }

    static String lost(double lossDb) {
        return lossDb >= 0.005 ? ", " + Figures.decibels(lossDb) + " short" : "";
    }

    @Override
    public Optional<String> held(Held it) {
        return Optional.of("held: recorded at " + Figures.of(it.value(), it.value(), unit) + lost(it.lossDb()));
    }

    @Override
    public Optional<String> twoPeaks(TwoPeaks it) {
        String higher = Math.abs(it.first()) >= Math.abs(it.second()) ? "the first" : "the second";
        return Optional.of("two peaks, dip of " + Figures.decibels(it.dipDb()) + " between: " + higher + " is higher");
    }

    @Override
    public Optional<String> noPeak(NoPeak it) {
        return Optional.of(noPeak(it.reason(), seek.code()));
    }

    private static String noPeak(NoPeakReason reason, String sought) {
        return switch (reason) {
            case FLAT -> "no " + sought + ": the reading does not move";
            case END_OF_TRAVEL -> "no " + sought + ": end of the travel";
            case REVERSED -> "no " + sought + " yet: the reading goes on, keep turning";
            case DEAD_ZERO -> "false zero: the sign does not change";
        };
    }

    @Override
    public Optional<String> overload(Overload it) {
        return say("OVERLOAD, %s: %s", it.cause().code(), it.advice());
    }

    @Override
    public Optional<String> overloadCleared(OverloadCleared it) {
        return Optional.of("overload gone");
    }

    @Override
    public Optional<String> weak(Weak it) {
        return say("weak, %.0f dB over the noise: %s", it.snrDb(), it.advice());
    }

    @Override
    public Optional<String> drift(Drift it) {
        return say("drifting %+.3g %s a minute, nothing is turned", it.perMinute(), it.unit());
    }

    @Override
    public Optional<String> link(Link it) {
        String what = switch (it.state()) {
            case LOST -> "LINK LOST";
            case STALE -> "NO NEW READINGS";
            case RESUMED -> "readings again";
        };
        return Optional.of(it.detail().isEmpty() ? what : what + ": " + it.detail());
    }

    @Override
    public Optional<String> mark(Mark it) {
        Optional<LevelCommand> command = LevelCommand.parse(it.text());
        Optional<Seek> sought = SeekCommand.parse(it.text());
        if (command.isPresent()) {
            return commanded(command.get());
        }
        if (sought.isPresent()) {
            return sought(sought.get());
        }
        if (StepCommand.isUndo(it.text())) {
            return Optional.of("the last value is taken back");
        }
        return Optional.of(it.text().isEmpty() ? "mark" : it.text());
    }

    private static Optional<String> commanded(LevelCommand command) {
        return Optional.of(
                switch (command.verb()) {
                    case POINT -> "meter at " + command.detail();
                    case CHECK -> "check of " + command.detail() + ": hands off for a moment";
                    case DONE -> "done";
                    case CANCEL -> "the check is dropped";
                    case REPAIRED -> "looked after: other faults may be suspected again";
                    case CUT -> "now change the generator to " + command.detail() + " times";
                });
    }

    /** Said only where it is another thing than before. */
    private Optional<String> sought(Seek newSeek) {
        Seek before = seek;
        seek = newSeek;
        return newSeek == before ? Optional.empty() : say("looking for a %s%s", newSeek.code(), words().nearer());
    }

    @Override
    public Optional<String> adjuster(Adjuster it) {
        return switch (it.action()) {
            case BEGIN -> Optional.of("now: " + it.name());
            case DONE -> Optional.of(it.name() + " done" + gain(it.gainDb()));
            case SKIP -> Optional.of(it.name() + " left as it is");
        };
    }

    private static String gain(double gainDb) {
        return Double.isNaN(gainDb) ? "" : String.format(Locale.ROOT, ", %+.1f dB", Rounded.to(gainDb, 1));
    }

    @Override
    public Optional<String> advice(Advice it) {
        return Optional.of(
                switch (it.topic()) {
                    case "ask" -> "please: " + it.text();
                    case Topics.SET_UP -> "set up: " + it.text();
                    case Topics.PLAN -> "plan: " + it.text();
                    default -> it.text();
                });
    }

    @Override
    public Optional<String> readingTaken(ReadingTaken it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> sessionEnd(SessionEnd it) {
        return say("end, %d readings: %s", it.readings(), it.reason());
    }

    private static Optional<String> say(String format, Object... arguments) {
        return Optional.of(String.format(Locale.ROOT, format, arguments));
    }
}

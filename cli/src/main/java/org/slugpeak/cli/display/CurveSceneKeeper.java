package org.slugpeak.cli.display;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slugpeak.core.curve.CurveRecords;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/** Keeps the scene of a response curve up to date. One thread feeds it; any thread may look at the scene. */
final class CurveSceneKeeper implements RecordSink {

    /** The direction says which point it is. */
    private static final Pattern POINT = Pattern.compile("\\((\\d+ of \\d+)\\)");

    private final boolean byHand;
    private volatile CurveScene scene = CurveScene.EMPTY;

    /** A scene at the beginning; by hand, or with a generator that sets itself. */
    CurveSceneKeeper(boolean byHand) {
        this.byHand = byHand;
    }

    CurveScene scene() {
        return scene;
    }

    @Override
    public void take(SessionRecord record) {
        scene = after(scene, record);
    }

    private CurveScene after(CurveScene before, SessionRecord record) {
        if (record instanceof SessionStart start) {
            return before.withSession(start.source(), start.measurand().unit());
        } else if (record instanceof ReadingTaken taken) {
            boolean trusted = taken.reading().condition().isTrusted();
            return before.withReading(trusted ? taken.reading().value() : Double.NaN);
        } else if (record instanceof Link link) {
            return link.state() == Link.State.RESUMED
                    ? before.withAlarm(Optional.empty())
                    : before.withReading(Double.NaN)
                            .withAlarm(Optional.of("meter " + link.state().code() + ": " + link.detail()));
        } else if (record instanceof Overload overload) {
            return before.withAlarm(Optional.of("OVERLOAD: " + overload.advice()));
        } else if (record instanceof OverloadCleared) {
            return before.withAlarm(Optional.empty());
        } else if (record instanceof Advice advice) {
            return advised(before, advice);
        }
        return before;
    }

    private CurveScene advised(CurveScene before, Advice it) {
        return switch (it.topic()) {
            case CurveRecords.SET -> {
                Matcher matcher = POINT.matcher(it.text());
                String to = kHz(it.amount()) + " kHz";
                String todo = byHand ? "set " + to + ", and let it stand" : to + " is set: nothing to do";
                yield before.withPoint(matcher.find() ? matcher.group(1) : "", it.amount(), todo);
            }
            case CurveRecords.POINT -> before.withNote(taken(it, before.unit()));
            case "ask" -> before.asking(it.text());
            case "curve-over" -> before.asking(it.text());
            case "check-over" -> before.asking("go on");
            default -> before.withNote(it.text());
        };
    }

    private static String taken(Advice point, String unit) {
        return "taken: " + kHz(Double.parseDouble(point.text())) + " kHz "
                + Figures.of(point.amount(), point.amount(), unit);
    }

    static String kHz(double hz) {
        return String.format(Locale.ROOT, "%.2f", hz / 1e3);
    }
}

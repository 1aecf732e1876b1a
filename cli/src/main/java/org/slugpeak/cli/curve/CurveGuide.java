package org.slugpeak.cli.curve;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.core.curve.CurveProgress;
import org.slugpeak.core.curve.CurveRecords;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Mark;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/** Steps the generator through a response curve. One thread: the session's. */
public final class CurveGuide implements Guide {

    private static final Set<String> TOPICS = Set.of(
            CurveRecords.SET,
            CurveRecords.POINT,
            "curve-over",
            "no-signal",
            "rest",
            "ask",
            "check-over",
            "check-dropped",
            "not-a-reading",
            "range-changed");

    private final CurveProgress progress;
    private final boolean restFirst;
    private final GeneratorControl generator;
    private Optional<BridgeException> failure = Optional.empty();
    private boolean finished;

    /**
     * A guide at the beginning of a curve.
     *
     * @param progress what is to be measured
     * @param restFirst whether the check of the resting reading comes first
     * @param generator who sets it
     */
    public CurveGuide(CurveProgress progress, boolean restFirst, GeneratorControl generator) {
        this.progress = progress;
        this.restFirst = restFirst;
        this.generator = generator;
    }

    /**
     * What the generator answered, where the curve ended for its sake.
     *
     * @return empty where the generator did as it was told
     */
    public Optional<BridgeException> failure() {
        return failure;
    }

    @Override
    public void begin(Analysis analysis) {
        if (restFirst) {
            analysis.mark(LevelCommand.check(CheckKind.REST).text());
        }
    }

    @Override
    public void take(SessionRecord record) {
        progress.take(record);
    }

    /** Nothing is turned: what finder and level watch make of the moving generator would mislead. */
    @Override
    public boolean passesOn(SessionRecord record) {
        return record instanceof Advice advice
                ? TOPICS.contains(advice.topic())
                : record instanceof SessionStart
                        || record instanceof ReadingTaken
                        || record instanceof Mark
                        || record instanceof Link
                        || record instanceof Overload
                        || record instanceof OverloadCleared
                        || record instanceof SessionEnd;
    }

    @Override
    public void lead(Analysis analysis, SessionControl control) {
        progress.takeNews().ifPresent(taken -> tell(taken, analysis));
        OptionalDouble hz = progress.toSet();
        if (hz.isPresent() && failure.isEmpty()) {
            set(hz.getAsDouble(), analysis, control);
        } else if (progress.isOver() && !finished) {
            finished = true;
            analysis.advise("curve-over", "the curve is complete: put the generator back", Double.NaN);
            control.quit("curve complete");
        }
    }

    private static void tell(CurveProgress.Taken taken, Analysis analysis) {
        if (taken.level() > 0) {
            analysis.advise(CurveRecords.POINT, CurveRecords.text(taken.hz()), taken.level());
        } else {
            analysis.advise(
                    "no-signal",
                    CurveText.kHz(taken.hz()) + " kHz: no reading that can be trusted; the point is left out",
                    Double.NaN);
        }
    }

    private void set(double hz, Analysis analysis, SessionControl control) {
        try {
            double real = generator.frequency(hz);
            String words = String.format(
                    Locale.ROOT,
                    "generator to %s kHz (%d of %d)",
                    CurveText.kHz(real),
                    progress.index() + 1,
                    progress.size());
            progress.set(real);
            analysis.advise(CurveRecords.SET, words, real);
        } catch (BridgeException refused) {
            failure = Optional.of(refused);
            control.quit("the generator does not follow");
        }
    }

    @Override
    public void next(Analysis analysis) {
        progress.next();
    }

    @Override
    public void back(Analysis analysis) {
        progress.back();
    }

    @Override
    public void skip(Analysis analysis) {
        progress.skip();
    }
}

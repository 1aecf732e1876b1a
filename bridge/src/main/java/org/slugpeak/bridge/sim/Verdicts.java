package org.slugpeak.bridge.sim;

import java.util.function.Consumer;
import org.slugpeak.core.peak.NoPeakReason;
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
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;

/** The records that a hand acts upon; the others pass by. One thread at a time. */
final class Verdicts implements SessionRecord.Matcher<Boolean> {

    private Runnable passed = () -> {};
    private Runnable returned = () -> {};
    private Runnable held = () -> {};
    private Runnable twoPeaks = () -> {};
    private Consumer<NoPeakReason> noPeak = reason -> {};
    private Consumer<Advice> advice = it -> {};
    private Consumer<ReadingTaken> reading = it -> {};

    Verdicts onPassed(Runnable what) {
        passed = what;
        return this;
    }

    Verdicts onReturned(Runnable what) {
        returned = what;
        return this;
    }

    Verdicts onHeld(Runnable what) {
        held = what;
        return this;
    }

    Verdicts onTwoPeaks(Runnable what) {
        twoPeaks = what;
        return this;
    }

    Verdicts onNoPeak(Consumer<NoPeakReason> what) {
        noPeak = what;
        return this;
    }

    Verdicts onAdvice(Consumer<Advice> what) {
        advice = what;
        return this;
    }

    Verdicts onReading(Consumer<ReadingTaken> what) {
        reading = what;
        return this;
    }

    @Override
    public Boolean passed(Passed it) {
        passed.run();
        return true;
    }

    @Override
    public Boolean returned(Returned it) {
        returned.run();
        return true;
    }

    @Override
    public Boolean held(Held it) {
        held.run();
        return true;
    }

    @Override
    public Boolean noPeak(NoPeak it) {
        noPeak.accept(it.reason());
        return true;
    }

    @Override
    public Boolean advice(Advice it) {
        advice.accept(it);
        return true;
    }

    @Override
    public Boolean sessionStart(SessionStart it) {
        return false;
    }

    @Override
    public Boolean twoPeaks(TwoPeaks it) {
        twoPeaks.run();
        return true;
    }

    @Override
    public Boolean overload(Overload it) {
        return false;
    }

    @Override
    public Boolean overloadCleared(OverloadCleared it) {
        return false;
    }

    @Override
    public Boolean weak(Weak it) {
        return false;
    }

    @Override
    public Boolean drift(Drift it) {
        return false;
    }

    @Override
    public Boolean link(Link it) {
        return false;
    }

    @Override
    public Boolean mark(Mark it) {
        return false;
    }

    @Override
    public Boolean adjuster(Adjuster it) {
        return false;
    }

    @Override
    public Boolean readingTaken(ReadingTaken it) {
        reading.accept(it);
        return true;
    }

    @Override
    public Boolean sessionEnd(SessionEnd it) {
        return false;
    }
}

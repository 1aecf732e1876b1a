package org.slugpeak.cli.words;

import org.slugpeak.bridge.log.Sentences;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.session.Work;
import org.slugpeak.core.steps.StepsBack;

/**
 * Says every kind of record that is said in the same words wherever it is said: on a screen, in a log. Immutable; any thread may
 * use it.
 */
public final class RecordSentences implements Sentences, Families<String> {

    private final FindingSentences findings = new FindingSentences();
    private final CautionSentences cautions = new CautionSentences();
    private final RequestSentences requests = new RequestSentences();
    private final WorkSentences works = new WorkSentences();
    private final GuardSentences guards = new GuardSentences();
    private final CurveSentences curves = new CurveSentences();
    private final SheetSentences sheets = new SheetSentences();
    private final LinkSentences links = new LinkSentences();
    private final SoundSentences sounds = new SoundSentences();

    /** The sentences of today's language. */
    public RecordSentences() {}

    @Override
    public String of(SessionRecord record) {
        return record.matchFamily(this);
    }

    @Override
    public String other(SessionRecord it) {
        return "";
    }

    @Override
    public String finding(Finding it) {
        return it.match(findings);
    }

    @Override
    public String caution(Caution it) {
        return it.match(cautions);
    }

    @Override
    public String request(Request it) {
        return it.match(requests);
    }

    @Override
    public String work(Work it) {
        return it.match(works);
    }

    @Override
    public String guard(Guard it) {
        return it.match(guards);
    }

    @Override
    public String curveWork(CurveWork it) {
        return it.match(curves);
    }

    @Override
    public String sheetWork(SheetWork it) {
        return it.match(sheets);
    }

    /** What a person says is kept as it was said; to a counter's reading there is something to say. */
    @Override
    public String said(Said it) {
        return it instanceof Said.Counted counted ? CounterWords.of(counted) : "";
    }

    @Override
    public String link(Link it) {
        return it.match(links);
    }

    @Override
    public String sound(Sound it) {
        return it.match(sounds);
    }

    /**
     * How far back something lies, and how well that is known.
     *
     * @param back in steps of the hand
     * @return for example {@code 1.4 steps (+-0.2)}
     */
    public static String steps(StepsBack back) {
        return FindingSentences.steps(back);
    }
}

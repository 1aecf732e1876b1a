package org.slugpeak.cli.curve;

import java.io.PrintStream;
import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.CurvePhrase;
import org.slugpeak.cli.words.DetailWords;
import org.slugpeak.cli.words.Frequencies;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/** Says in lines what to set and what was read. One thread: the session's. */
final class CurveLines implements RecordSink, Families<String>, Request.Matcher<String> {

    private final PrintStream error;
    private final String unit;
    private final RecordSentences sentences = new RecordSentences();

    CurveLines(PrintStream error, String unit) {
        this.error = error;
        this.unit = unit;
    }

    @Override
    public void take(SessionRecord record) {
        String line = record.matchFamily(this);
        if (!line.isEmpty()) {
            error.println(line);
        }
    }

    @Override
    public String other(SessionRecord it) {
        return "";
    }

    @Override
    public String link(Link it) {
        return it instanceof Link.Changed changed ? changed(changed) : "";
    }

    private static String changed(Link.Changed it) {
        String state = CodeWords.of(it.state().code());
        String detail = DetailWords.of(it.detail());
        return detail.isEmpty() ? ScreenPhrase.LINK.of(state) : ScreenPhrase.LINK_DETAIL.of(state, detail);
    }

    @Override
    public String caution(Caution it) {
        if (it instanceof Overload) {
            return CurvePhrase.OVERLOAD.of(sentences.of(it));
        }
        return it instanceof Caution.Checked ? sentences.of(it) : "";
    }

    @Override
    public String request(Request it) {
        return it.match(this);
    }

    @Override
    public String curveWork(CurveWork it) {
        return it instanceof CurveWork.PointTaken point ? taken(point) : sentences.of(it);
    }

    private String taken(CurveWork.PointTaken it) {
        return CurvePhrase.READS.of(Frequencies.kHz(it.hz()), it.level(), unit);
    }

    @Override
    public String asked(Request.Asked it) {
        return sentences.of(it);
    }

    @Override
    public String cutGenerator(Request.CutGenerator it) {
        return "";
    }

    @Override
    public String generatorChanged(Request.GeneratorChanged it) {
        return "";
    }

    @Override
    public String generatorUnchanged(Request.GeneratorUnchanged it) {
        return "";
    }

    @Override
    public String checkOver(Request.CheckOver it) {
        return "";
    }

    @Override
    public String checkDropped(Request.CheckDropped it) {
        return CurvePhrase.NO_REST.of(sentences.of(it));
    }

    @Override
    public String setUp(Request.SetUp it) {
        return "";
    }

    @Override
    public String undamp(Request.Undamp it) {
        return "";
    }

    @Override
    public String turn(Request.Turn it) {
        return "";
    }

    @Override
    public String handsOff(Request.HandsOff it) {
        return "";
    }

    @Override
    public String setGenerator(Request.SetGenerator it) {
        return sentences.of(it);
    }

    @Override
    public String generatorStands(Request.GeneratorStands it) {
        return "";
    }

    @Override
    public String generatorFails(Request.GeneratorFails it) {
        return sentences.of(it);
    }
}

package org.slugpeak.cli.words;

import org.slugpeak.core.session.CurveWork;

/** What comes of a response curve. Immutable. */
final class CurveSentences implements CurveWork.Matcher<String> {

    @Override
    public String pointTaken(CurveWork.PointTaken it) {
        return "";
    }

    @Override
    public String pointLeftOut(CurveWork.PointLeftOut it) {
        return Phrase.POINT_LEFT_OUT.of(Frequencies.kHz(it.hz()));
    }

    @Override
    public String lawStep(CurveWork.LawStep it) {
        return "";
    }

    @Override
    public String curveOver(CurveWork.CurveOver it) {
        return Phrase.CURVE_OVER.of();
    }
}

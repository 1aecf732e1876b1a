package org.slugpeak.bridge.testkit;

import java.util.Locale;
import org.slugpeak.core.session.LinkDetail;

/** What is known of a change of the link, in a word and its figure, for tests of which kind is told and of what amount. */
public final class ShortDetail implements LinkDetail.Matcher<String> {

    private static final ShortDetail SHORT = new ShortDetail();

    private ShortDetail() {}

    /** Words of another as they are; seconds to a tenth. */
    public static String of(LinkDetail detail) {
        return detail.match(SHORT);
    }

    @Override
    public String told(LinkDetail.Told it) {
        return it.text();
    }

    @Override
    public String cause(LinkDetail.Cause it) {
        return it.name();
    }

    @Override
    public String silent(LinkDetail.Silent it) {
        return seconds("silent", it.seconds());
    }

    @Override
    public String nothingYet(LinkDetail.NothingYet it) {
        return seconds("nothing from " + it.sender(), it.seconds());
    }

    @Override
    public String after(LinkDetail.After it) {
        return seconds("after", it.seconds());
    }

    @Override
    public String board(LinkDetail.Board it) {
        return it.name() + (it.restarted() ? " restarted" : " set anew");
    }

    @Override
    public String timesAgain(LinkDetail.TimesAgain it) {
        return "times again at " + it.line();
    }

    private static String seconds(String word, double seconds) {
        return String.format(Locale.ROOT, "%s %.1f", word, seconds);
    }
}

package org.slugpeak.cli.words;

import org.slugpeak.core.session.LinkDetail;

/** Why a link changed, or the run of readings broke. Immutable; any thread may use it. */
public final class DetailWords implements LinkDetail.Matcher<String> {

    private static final DetailWords WORDS = new DetailWords();

    private DetailWords() {}

    /**
     * What is known of it.
     *
     * @param detail of a change
     * @return one line; may be empty
     */
    public static String of(LinkDetail detail) {
        return detail.match(WORDS);
    }

    @Override
    public String told(LinkDetail.Told it) {
        return it.text();
    }

    @Override
    public String cause(LinkDetail.Cause it) {
        return switch (it) {
            case PULLED -> LinkPhrase.PULLED.of();
            case SOUND_GONE -> LinkPhrase.SOUND_GONE.of();
            case SOUND_SILENT -> LinkPhrase.SOUND_SILENT.of();
            case RANGE_TO_BE_ASKED_FOR -> LinkPhrase.RANGE_TO_BE_ASKED_FOR.of();
            case RANGE_TO_BE_SET -> LinkPhrase.RANGE_TO_BE_SET.of();
            case CLOCK_AGAIN -> LinkPhrase.CLOCK_AGAIN.of();
            case NOT_ALL_SENT -> LinkPhrase.NOT_ALL_SENT.of();
        };
    }

    @Override
    public String silent(LinkDetail.Silent it) {
        return LinkPhrase.SILENT.of(it.seconds());
    }

    @Override
    public String nothingYet(LinkDetail.NothingYet it) {
        return switch (it.sender()) {
            case METER -> LinkPhrase.NO_METER_YET.of(it.seconds());
            case PROGRAM -> LinkPhrase.NO_PROGRAM_YET.of(it.seconds());
        };
    }

    @Override
    public String after(LinkDetail.After it) {
        return LinkPhrase.AFTER.of(it.seconds());
    }

    @Override
    public String board(LinkDetail.Board it) {
        return it.restarted() ? LinkPhrase.BOARD_RESTARTED.of(it.name()) : LinkPhrase.BOARD_SET_ANEW.of(it.name());
    }

    @Override
    public String timesAgain(LinkDetail.TimesAgain it) {
        return LinkPhrase.TIMES_AGAIN.of(it.line());
    }
}

package org.slugpeak.cli.words;

import org.slugpeak.core.session.Link;

/** What happens between instrument and tool; whoever noticed has said it in a line already. Immutable. */
final class LinkSentences implements Link.Matcher<String> {

    @Override
    public String changed(Link.Changed it) {
        return DetailWords.of(it.detail());
    }

    @Override
    public String broken(Link.Broken it) {
        return DetailWords.of(it.detail());
    }

    @Override
    public String notAReading(Link.NotAReading it) {
        return it.where() + ": " + it.problem();
    }

    @Override
    public String leftOut(Link.LeftOut it) {
        return Phrase.LEFT_OUT.of(it.count());
    }

    @Override
    public String lowBattery(Link.LowBattery it) {
        return Phrase.LOW_BATTERY.of();
    }

    @Override
    public String unitTold(Link.UnitTold it) {
        return Phrase.UNIT_TOLD.of(it.unit());
    }

    @Override
    public String logGap(Link.LogGap it) {
        return (it.lost() == 1 ? Phrase.RECORD_MISSING : Phrase.RECORDS_MISSING).of(it.lost());
    }
}

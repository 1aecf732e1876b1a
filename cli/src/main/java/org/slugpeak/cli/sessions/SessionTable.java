package org.slugpeak.cli.sessions;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.cli.arithmetic.Table;
import org.slugpeak.cli.words.SessionsPhrase;

/** Sessions as a list to look through. All methods are pure. */
public final class SessionTable {

    private static final DateTimeFormatter STARTED = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private SessionTable() {}

    /**
     * A line for each session below one with headings.
     *
     * @param sessions in their order
     * @param zone in which dates are told
     * @return a table
     */
    public static String of(List<FoundSession> sessions, ZoneId zone) {
        boolean severalBenches =
                sessions.stream().map(FoundSession::bench).distinct().count() > 1;
        Table table = new Table(
                SessionsPhrase.STARTED.of(),
                SessionsPhrase.SET.of(),
                SessionsPhrase.SERIAL.of(),
                SessionsPhrase.ADJUSTERS.of(),
                SessionsPhrase.READINGS.of(),
                SessionsPhrase.FILE.of());
        for (FoundSession each : sessions) {
            KeptSession it = each.session();
            String file = SafeText.line(severalBenches ? each.bench() + ": " + each.file() : each.file());
            table.row(
                    STARTED.format(it.startedAt().atZone(zone)),
                    it.set(),
                    it.serial(),
                    Integer.toString(it.adjusters().size()),
                    Long.toString(it.readings()),
                    it.whole() ? file : SessionsPhrase.CUT.of(file));
        }
        return table.text();
    }
}

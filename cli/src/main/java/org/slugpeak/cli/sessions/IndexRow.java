package org.slugpeak.cli.sessions;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import org.slugpeak.cli.report.Facts;

/**
 * A log as a row of the index. Immutable; any thread may use it.
 *
 * @param bench whose it is
 * @param folder where that bench keeps its logs
 * @param log what was read
 */
record IndexRow(String bench, String folder, ReadLog log) {

    /** The file, in the order of the columns of its table. */
    void fillLog(PreparedStatement add, String id) throws SQLException {
        LogStamp stamp = log.stamp();
        Gaps gaps = keyed(add, id);
        gaps.whole(stamp.bytes());
        gaps.whole(stamp.modifiedMillis());
        gaps.whole(stamp.hash());
    }

    /** What it tells, in the order of the columns of its table. */
    void fillSession(PreparedStatement add, String id, KeptSession session) throws SQLException {
        String adjusters = String.join("\n", session.adjusters());
        Gaps gaps = keyed(add, id);
        gaps.whole(session.startedAt().toEpochMilli());
        gaps.text(session.source());
        gaps.text(session.plan());
        gaps.text(String.join("\n", session.facts().notes()));
        gaps.whole(session.seconds());
        gaps.whole(session.readings());
        gaps.flag(session.whole());
        gaps.text(adjusters);
        gaps.text(KeptSession.small(session.set() + "\n" + session.plan()));
        gaps.text(KeptSession.small(session.serial()));
        gaps.text(KeptSession.small(adjusters));
        gaps.text(session.words(log.stamp().file(), log.said()));
    }

    private Gaps keyed(PreparedStatement add, String id) throws SQLException {
        Gaps gaps = new Gaps(add);
        gaps.text(id);
        gaps.text(bench);
        gaps.text(folder);
        gaps.text(log.stamp().file());
        return gaps;
    }

    /** The row on which a result stands, in the order in which it is asked for. */
    static FoundSession found(ResultSet row) throws SQLException {
        return new FoundSession(
                row.getString(1),
                row.getString(2),
                row.getString(3),
                new KeptSession(
                        Instant.ofEpochMilli(row.getLong(4)),
                        row.getString(5),
                        row.getString(6),
                        lines(row.getString(7)).stream().map(Facts::ofNote).reduce(Facts.none(), Facts::with),
                        row.getLong(8),
                        row.getLong(9),
                        row.getBoolean(10),
                        lines(row.getString(11))));
    }

    private static List<String> lines(String text) {
        return text.lines().filter(line -> !line.isEmpty()).collect(Collectors.toList());
    }

    /** Fills the gaps of a statement from left to right. One thread. */
    private static final class Gaps {

        private final PreparedStatement statement;
        private int at;

        private Gaps(PreparedStatement statement) {
            this.statement = statement;
        }

        private void text(String text) throws SQLException {
            statement.setString(++at, text);
        }

        private void whole(long number) throws SQLException {
            statement.setLong(++at, number);
        }

        private void flag(boolean flag) throws SQLException {
            statement.setBoolean(++at, flag);
        }
    }
}

package org.slugpeak.cli.sessions;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
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

    /** In the order of the columns of the table. */
    void fill(PreparedStatement add, String id) throws SQLException {
        LogStamp stamp = log.stamp();
        Optional<KeptSession> session = log.session();
        Gaps gaps = new Gaps(add);
        gaps.text(id);
        gaps.text(bench);
        gaps.text(folder);
        gaps.text(stamp.file());
        gaps.whole(stamp.bytes());
        gaps.whole(stamp.modifiedMillis());
        gaps.whole(stamp.hash());
        gaps.flag(session.isPresent());
        gaps.whole(session.map(it -> it.startedAt().toEpochMilli()).orElse(0L));
        gaps.text(session.map(KeptSession::source).orElse(""));
        gaps.text(session.map(KeptSession::plan).orElse(""));
        gaps.text(session.map(it -> String.join("\n", it.facts().notes())).orElse(""));
        gaps.whole(session.map(KeptSession::seconds).orElse(0L));
        gaps.whole(session.map(KeptSession::readings).orElse(0L));
        gaps.flag(session.map(KeptSession::whole).orElse(false));
        String adjusters = session.map(it -> String.join("\n", it.adjusters())).orElse("");
        gaps.text(adjusters);
        gaps.text(session.map(KeptSession::said).orElse(""));
        gaps.text(session.map(it -> KeptSession.small(it.set() + "\n" + it.plan()))
                .orElse(""));
        gaps.text(session.map(it -> KeptSession.small(it.serial())).orElse(""));
        gaps.text(KeptSession.small(adjusters));
        gaps.text(session.map(it -> it.words(stamp.file())).orElse(""));
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
                        lines(row.getString(11)),
                        row.getString(12)));
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

package org.slugpeak.cli.sessions;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.slugpeak.bridge.source.BadConfiguration;

/**
 * The index of one bench's folder, and of whatever other benches keep in the same place. It has nothing that is not in the logs. One thread at a time; several processes
 * may work on the same shared place at once.
 */
public final class SessionIndex implements AutoCloseable {

    /** Integrity constraint and syntax classes of ISO/IEC 9075-2, 24.1, as PostgreSQL spells "somebody else was quicker". */
    private static final Set<String> SOMEBODY_WAS_QUICKER = Set.of("23505", "40001", "40P01", "42P07", "42710");

    private static final int TRIES = 5;

    private final IndexPlace place;
    private final String bench;
    private final String folder;
    private final IndexConnection opened;
    private final Connection connection;

    private SessionIndex(IndexPlace place, String bench, String folder, IndexConnection opened) {
        this.place = place;
        this.bench = bench;
        this.folder = folder;
        this.opened = opened;
        this.connection = opened.sql();
    }

    /**
     * Opens the index, and makes it where there is none.
     *
     * @param place where it is
     * @param bench whose logs are added
     * @param folder where they are
     * @param waiting told where another process has to be waited for
     * @return to be closed by the caller
     * @throws BadConfiguration where it cannot be reached or made
     */
    public static SessionIndex open(IndexPlace place, String bench, String folder, Runnable waiting)
            throws BadConfiguration {
        SessionIndex index = new SessionIndex(place, bench, folder, place.connect(waiting));
        try {
            index.create();
            return index;
        } catch (SQLException e) {
            index.close();
            throw index.trouble(e);
        }
    }

    private void create() throws SQLException {
        connection.setAutoCommit(false);
        for (int tried = 1; ; tried++) {
            try (Statement statement = connection.createStatement()) {
                for (String table : IndexSql.CREATE) {
                    statement.execute(table);
                }
                connection.commit();
                return;
            } catch (SQLException e) {
                undo();
                if (tried == TRIES || !SOMEBODY_WAS_QUICKER.contains(String.valueOf(e.getSQLState()))) {
                    throw e;
                }
            }
        }
    }

    /** What is known of the logs in this folder. */
    Map<String, LogStamp> known() throws BadConfiguration {
        Map<String, LogStamp> known = new TreeMap<>();
        try (PreparedStatement select = connection.prepareStatement(IndexSql.KNOWN)) {
            select.setString(1, bench);
            select.setString(2, folder);
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    String file = rows.getString(1);
                    known.put(file, new LogStamp(file, rows.getLong(2), rows.getLong(3), rows.getLong(4)));
                }
            }
            connection.commit();
            return known;
        } catch (SQLException e) {
            throw trouble(e);
        }
    }

    /** Takes in what was read anew, all of it or nothing. */
    void update(Collection<ReadLog> read) throws BadConfiguration {
        change(() -> {
            leaveOut(read.stream().map(log -> log.stamp().file()).toList());
            try (PreparedStatement logs = connection.prepareStatement(IndexSql.ADD_LOG);
                    PreparedStatement sessions = connection.prepareStatement(IndexSql.ADD_SESSION)) {
                for (ReadLog log : read) {
                    add(log, logs, sessions);
                }
                logs.executeBatch();
                sessions.executeBatch();
            }
        });
    }

    private void add(ReadLog log, PreparedStatement logs, PreparedStatement sessions) throws SQLException {
        String id = id(log.stamp().file());
        IndexRow row = new IndexRow(bench, folder, log);
        row.fillLog(logs, id);
        logs.addBatch();
        if (log.session().isPresent()) {
            row.fillSession(sessions, id, log.session().get());
            sessions.addBatch();
        }
    }

    /** Forgets what is gone. */
    void forget(Collection<String> gone) throws BadConfiguration {
        change(() -> leaveOut(gone));
    }

    private void leaveOut(Collection<String> files) throws SQLException {
        for (String sql : IndexSql.FORGET) {
            try (PreparedStatement forget = connection.prepareStatement(sql)) {
                for (String file : files) {
                    forget.setString(1, id(file));
                    forget.addBatch();
                }
                forget.executeBatch();
            }
        }
    }

    /** Notes new dates of logs that say the same as before. */
    void touch(Collection<LogStamp> stamps) throws BadConfiguration {
        change(() -> {
            try (PreparedStatement touch = connection.prepareStatement(IndexSql.TOUCH)) {
                for (LogStamp stamp : stamps) {
                    touch.setLong(1, stamp.modifiedMillis());
                    touch.setString(2, id(stamp.file()));
                    touch.addBatch();
                }
                touch.executeBatch();
            }
        });
    }

    /** What is written together. */
    @FunctionalInterface
    private interface Writing {
        void run() throws SQLException;
    }

    /** All of it or nothing; where somebody else wrote the same at the same time, once more. */
    private void change(Writing writing) throws BadConfiguration {
        for (int tried = 1; ; tried++) {
            try {
                writing.run();
                connection.commit();
                return;
            } catch (SQLException e) {
                undo();
                if (tried == TRIES || !SOMEBODY_WAS_QUICKER.contains(String.valueOf(e.getSQLState()))) {
                    throw trouble(e);
                }
            }
        }
    }

    private void undo() {
        try {
            connection.rollback();
        } catch (SQLException e) {
            // The connection is gone, which the next statement tells.
        }
    }

    /**
     * Finds sessions, of all benches that keep theirs in this place.
     *
     * @param query what is looked for
     * @return the newest first
     * @throws BadConfiguration where the index cannot be read
     */
    public List<FoundSession> find(SessionQuery query) throws BadConfiguration {
        SqlFilter filter = new SqlFilter(query);
        List<FoundSession> found = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(IndexSql.find(filter))) {
            filter.fill(select);
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    found.add(IndexRow.found(rows));
                }
            }
            connection.commit();
            return found;
        } catch (SQLException e) {
            throw trouble(e);
        }
    }

    /** A key of one length, however long names are: a B-tree takes no long ones. */
    private String id(String file) {
        try {
            byte[] key = String.join("\n", bench, folder, file).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(key));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private BadConfiguration trouble(SQLException e) {
        return new BadConfiguration("the index " + place.name() + " cannot be used (" + e.getMessage()
                + "): the logs are untouched; delete the index and it is made again");
    }

    @Override
    public void close() {
        opened.close();
    }
}

package org.slugpeak.cli.sessions;

import java.util.List;

/**
 * What is said to the database: only SQL that both of them understand (ISO/IEC 9075, core features, and {@code create table if not
 * exists}). All methods are pure.
 */
final class IndexSql {

    /** What is known of every file that is called like a log; read whole by each call, and therefore apart from what they tell. */
    private static final String LOGS = "slugpeak_logs_2";

    /** What those tell that are logs. Another form of a table is another table, so that two versions of the program leave each other alone. */
    private static final String SESSIONS = "slugpeak_sessions_2";

    static final List<String> CREATE = List.of(
            "create table if not exists " + LOGS
                    + " (id varchar(64) primary key, bench varchar, folder varchar, file varchar,"
                    + " bytes bigint, modified bigint, hash bigint)",
            "create table if not exists " + SESSIONS
                    + " (id varchar(64) primary key, bench varchar, folder varchar, file varchar,"
                    + " started bigint, source varchar, plan varchar, facts varchar, seconds bigint, readings bigint,"
                    + " whole boolean, adjusters varchar, set_words varchar, serial varchar, adjuster_words varchar,"
                    + " words varchar)");

    static final String KNOWN = "select file, bytes, modified, hash from " + LOGS + " where bench = ? and folder = ?";

    static final List<String> FORGET =
            List.of("delete from " + LOGS + " where id = ?", "delete from " + SESSIONS + " where id = ?");

    static final String TOUCH = "update " + LOGS + " set modified = ? where id = ?";

    static final String ADD_LOG = "insert into " + LOGS + " values (?, ?, ?, ?, ?, ?, ?)";

    static final String ADD_SESSION =
            "insert into " + SESSIONS + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    private static final String FIND =
            "select bench, folder, file, started, source, plan, facts, seconds, readings, whole," + " adjusters from "
                    + SESSIONS;

    private static final String ORDER = " order by started desc, file, bench";

    private IndexSql() {}

    /** Sessions that pass a filter, the newest first. */
    static String find(SqlFilter filter) {
        return FIND + filter.where() + ORDER;
    }
}

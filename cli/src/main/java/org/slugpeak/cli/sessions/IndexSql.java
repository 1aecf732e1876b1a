package org.slugpeak.cli.sessions;

/**
 * What is said to the database: only SQL that both of them understand (ISO/IEC 9075, core features, and {@code create table if not
 * exists}). All methods are pure.
 */
final class IndexSql {

    /** Another form of the table is another table, so that two versions of the program leave each other alone. */
    private static final String TABLE = "slugpeak_sessions_1";

    static final String CREATE = "create table if not exists " + TABLE + " (id varchar(64) primary key, bench varchar,"
            + " folder varchar, file varchar, bytes bigint, modified bigint, hash bigint, is_session boolean, started bigint,"
            + " source varchar, plan varchar, facts varchar, seconds bigint, readings bigint, whole boolean, adjusters varchar,"
            + " said varchar, set_words varchar, serial varchar, adjuster_words varchar, words varchar)";

    static final String KNOWN = "select file, bytes, modified, hash from " + TABLE + " where bench = ? and folder = ?";

    static final String FORGET = "delete from " + TABLE + " where id = ?";

    static final String TOUCH = "update " + TABLE + " set modified = ? where id = ?";

    static final String ADD =
            "insert into " + TABLE + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    private static final String FIND =
            "select bench, folder, file, started, source, plan, facts, seconds, readings, whole,"
                    + " adjusters, said from " + TABLE + " where ";

    private static final String ORDER = " order by started desc, file, bench";

    private IndexSql() {}

    /** Sessions that pass a filter, the newest first. */
    static String find(SqlFilter filter) {
        return FIND + filter.condition() + ORDER;
    }
}

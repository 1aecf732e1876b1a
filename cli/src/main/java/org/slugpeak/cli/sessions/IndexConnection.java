package org.slugpeak.cli.sessions;

import java.io.Closeable;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;

/**
 * A connection to the index, and what keeps others out meanwhile. One thread at a time.
 *
 * @param sql speaks to the database
 * @param gate let go after it
 */
record IndexConnection(Connection sql, Closeable gate) implements AutoCloseable {

    /** What was committed is there, and nothing else was promised. */
    @Override
    public void close() {
        try (gate) {
            sql.close();
        } catch (SQLException | IOException e) {
            // Nothing more can be done, and nothing is lost.
        }
    }
}

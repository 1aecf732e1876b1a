package org.slugpeak.cli.report;

import java.util.List;

/**
 * A table of the report. Immutable; any thread may use it.
 *
 * @param title heading; empty where it has none
 * @param columns one heading a column
 * @param rows as many cells as columns
 */
record ReportTable(String title, List<String> columns, List<List<String>> rows) {

    boolean isEmpty() {
        return rows.isEmpty();
    }
}

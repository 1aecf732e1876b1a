package org.slugpeak.cli.sessions;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A query as a condition in SQL, with what its gaps are filled with. One thread at a time. */
final class SqlFilter {

    private final List<String> terms = new ArrayList<>();
    private final List<Object> gaps = new ArrayList<>();

    SqlFilter(SessionQuery query) {
        query.words().forEach(word -> contains("words", Optional.of(word)));
        contains("set_words", query.set());
        contains("serial", query.serial());
        contains("adjuster_words", query.adjuster());
        query.from().ifPresent(from -> add("started >= ?", from.toEpochMilli()));
        query.before().ifPresent(before -> add("started < ?", before.toEpochMilli()));
    }

    private void contains(String column, Optional<String> text) {
        text.map(KeptSession::small)
                .map(part -> part.replaceAll("([!%_])", "!$1"))
                .ifPresent(part -> add(column + " like ? escape '!'", "%" + part + "%"));
    }

    private void add(String term, Object gap) {
        terms.add(term);
        gaps.add(gap);
    }

    /** Empty where everything passes. */
    String where() {
        return terms.isEmpty() ? "" : " where " + String.join(" and ", terms);
    }

    void fill(PreparedStatement statement) throws SQLException {
        for (int i = 0; i < gaps.size(); i++) {
            statement.setObject(i + 1, gaps.get(i));
        }
    }
}

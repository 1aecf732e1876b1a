package org.slugpeak.cli.display;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentWords;

/**
 * The rows under the header, most urgent first: an alarm, a warning that stands until it is answered, then what the user was just
 * told. Immutable; any thread may use it.
 *
 * @param rows from the top; those that do not fit are left out
 * @param needed how many rows shall be kept free for them, so that a remark that comes and goes does not move the rest
 */
record Banner(List<Row> rows, int needed) {

    /** One row. */
    private record Row(String text, Grid.Style style) {}

    /**
     * What is to be said now.
     *
     * @param moment what is seen
     * @param told something that comes from no record; may be empty
     * @param keys what the keys do
     * @param columns for a row
     */
    static Banner of(Moment moment, String told, List<KeyHint> keys, int columns) {
        List<Row> rows = new ArrayList<>();
        String alarm = MomentWords.alarm(moment);
        add(rows, alarm, Grid.Style.ALERT, columns);
        moment.warning().ifPresent(it -> add(rows, it.text() + answer(keys), Grid.Style.ALERT, columns));
        boolean stands = moment.warning().isPresent();
        int needed = rows.size() + (stands ? 1 : 0);
        if (alarm.isEmpty() && !told.isEmpty()) {
            add(rows, told, Grid.Style.STRONG, columns);
        } else if (alarm.isEmpty()) {
            add(rows, moment.note().map(Moment.Note::text).orElse(""), Grid.Style.PLAIN, columns);
        }
        return new Banner(List.copyOf(rows), stands ? needed : rows.size());
    }

    private static void add(List<Row> rows, String text, Grid.Style style, int columns) {
        if (!text.isEmpty()) {
            Wrapped.text(text, columns).forEach(row -> rows.add(new Row(row, style)));
        }
    }

    private static String answer(List<KeyHint> keys) {
        return keys.stream()
                .filter(hint -> hint.action() == KeyAction.REPAIRED)
                .findFirst()
                .map(hint -> " (" + hint.phrase() + ")")
                .orElse("");
    }

    /** How many rows are not empty. */
    int used() {
        return rows.size();
    }

    void draw(Grid grid, int top, int room, int left) {
        for (int i = 0; i < Math.min(room, rows.size()); i++) {
            Row row = rows.get(i);
            if (row.style() != Grid.Style.PLAIN) {
                grid.fill(top + i, row.style());
            }
            grid.write(top + i, left, row.text(), row.style());
        }
    }
}

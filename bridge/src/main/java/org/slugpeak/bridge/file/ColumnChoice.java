package org.slugpeak.bridge.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.core.reading.Measurand;

/** Finds the column of readings and the column of times of one table. Where more than one may be it, none is taken. */
final class ColumnChoice {

    private final NumberTable table;
    private final CsvOptions options;
    private final String where;
    private final List<ColumnName> names;
    private final TimeChoice times;

    ColumnChoice(NumberTable table, CsvOptions options, String name) {
        this.table = table;
        this.options = options;
        this.where = name + " line " + table.lines().get(0).number();
        this.names = table.names().stream().map(ColumnName::of).toList();
        this.times = new TimeChoice(table, names);
    }

    Columns columns() throws BadInput {
        Optional<TimeColumn> time = time();
        int value = value(time);
        Optional<ReadingUnit> told = unit(value);
        refuseOtherUnit(told);
        Optional<ReadingUnit> stated = options.unit().flatMap(ReadingUnit::of);
        Optional<ReadingUnit> unit = told.or(() -> stated);
        Measurand unnamed = unit.map(ReadingUnit::measurand).orElse(Measurand.UNKNOWN);
        Measurand named = names.isEmpty() ? unnamed : names.get(value).measurand();
        Measurand measurand = named.unit().isEmpty() ? new Measurand(named.quantity(), unnamed.unit()) : named;
        return new Columns(Math.max(table.columns(), names.size()), value, time, unit, measurand, table.names());
    }

    private Optional<TimeColumn> time() throws BadInput {
        if (options.timeColumn().isPresent()) {
            String wanted = options.timeColumn().get();
            return wanted.equals("none") ? Optional.empty() : Optional.of(times.of(index(wanted, "--time-column")));
        }
        Optional<TimeColumn> known = times.known();
        if (known.isPresent()) {
            return known;
        }
        List<Integer> rising = times.rising();
        boolean pair = numbers().size() == 2; // time and reading, in this order
        if (rising.size() > 1 && !pair) {
            throw new BadInput(where + ": more than one column may be the time: " + listed(rising)
                    + ": say which with --time-column N, or none");
        }
        return rising.isEmpty() ? Optional.empty() : Optional.of(times.of(rising.get(0)));
    }

    private int value(Optional<TimeColumn> time) throws BadInput {
        if (options.valueColumn().isPresent()) {
            return index(options.valueColumn().get(), "--value-column");
        }
        List<Integer> candidates = candidates(time);
        List<Integer> volts = candidates.stream()
                .filter(each -> unit(each).filter(ReadingUnit::isVolts).isPresent())
                .toList();
        if (volts.size() == 1 || candidates.size() == 1) {
            return volts.size() == 1 ? volts.get(0) : candidates.get(0);
        }
        if (candidates.isEmpty()) {
            throw new BadInput(
                    where + " names a time column and no column of readings: add one, for example 'seconds,volts'");
        }
        throw new BadInput(where + ": more than one column may be the reading: "
                + listed(volts.isEmpty() ? candidates : volts)
                + ": say which with --value-column N, or with its name");
    }

    /** Numbers that are neither times nor count the lines. */
    private List<Integer> candidates(Optional<TimeColumn> time) {
        List<Integer> left = new ArrayList<>(numbers());
        time.ifPresent(column -> left.removeIf(
                each -> each == column.index() || column.dateIndex().equals(OptionalInt.of(each))));
        List<Integer> uncounted =
                left.stream().filter(each -> !times.counts(each)).toList();
        return uncounted.isEmpty() ? left : uncounted;
    }

    private List<Integer> numbers() {
        return IntStream.range(0, table.columns())
                .filter(table::isNumber)
                .boxed()
                .toList();
    }

    /** The unit that the header line names, or else the cells. */
    private Optional<ReadingUnit> unit(int index) {
        Optional<ReadingUnit> named =
                names.isEmpty() ? Optional.empty() : names.get(index).readingUnit();
        return named.or(() -> table.column(index).stream()
                .map(cell -> NumberCell.parse(cell, table.shape().point()).flatMap(NumberCell::unit))
                .flatMap(Optional::stream)
                .findFirst()
                .flatMap(unit -> unit.decibels() ? Optional.of(unit) : ReadingUnit.of(unit.base())));
    }

    private void refuseOtherUnit(Optional<ReadingUnit> told) throws BadInput {
        Optional<ReadingUnit> stated = options.unit().flatMap(ReadingUnit::of);
        if (told.isPresent() && stated.isPresent() && !told.equals(stated)) {
            throw new BadInput(where + ": the file tells another unit than --unit "
                    + options.unit().get() + ": leave --unit out");
        }
    }

    private int index(String wanted, String option) throws BadInput {
        for (int i = 0; i < table.names().size(); i++) {
            if (table.names().get(i).strip().equalsIgnoreCase(wanted)
                    || names.get(i).base().equalsIgnoreCase(wanted)) {
                return i;
            }
        }
        int columns = Math.max(table.columns(), names.size());
        boolean number = wanted.matches("\\d{1,3}");
        if (number && Integer.parseInt(wanted) >= 1 && Integer.parseInt(wanted) <= columns) {
            return Integer.parseInt(wanted) - 1;
        }
        throw new BadInput(where + " has no column '" + Excerpt.of(wanted) + "' for " + option + ": it has "
                + listed(IntStream.range(0, columns).boxed().toList()));
    }

    private String listed(List<Integer> indices) {
        return indices.stream()
                .map(each -> (each + 1)
                        + (names.isEmpty()
                                ? ""
                                : " '" + Excerpt.of(table.names().get(each)) + "'"))
                .collect(Collectors.joining(", "));
    }
}

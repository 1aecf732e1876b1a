package org.slugpeak.bridge.file;

import java.util.List;
import java.util.Optional;
import org.slugpeak.core.reading.Measurand;

/**
 * Where a line has its time and its reading. Immutable.
 *
 * @param count how many columns a line has at most
 * @param value index of the column of readings
 * @param time column of times, if there is one
 * @param unit the unit of the numbers, where it is told and known
 * @param measurand what the readings are
 * @param names of all columns; empty without a header line
 */
record Columns(
        int count,
        int value,
        Optional<TimeColumn> time,
        Optional<ReadingUnit> unit,
        Measurand measurand,
        List<String> names) {

    /** One value a line, in the unit that was stated. */
    static Columns ofOneValue(Optional<ReadingUnit> stated) {
        Measurand measurand = stated.map(ReadingUnit::measurand).orElse(Measurand.UNKNOWN);
        return new Columns(1, 0, Optional.empty(), stated, measurand, List.of());
    }

    /** Name of the column of readings; empty without a header line. */
    String label() {
        return names.isEmpty() ? "" : names.get(value).strip();
    }

    /** How many columns a line must have at least. */
    int needed() {
        return 1 + Math.max(value, time.map(TimeColumn::last).orElse(0));
    }

    /** Whether the readings are turned from decibels into what they stand for. */
    boolean fromDecibels() {
        return unit.isPresent() && unit.get().decibels();
    }
}

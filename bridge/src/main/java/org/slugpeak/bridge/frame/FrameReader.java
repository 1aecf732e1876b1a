package org.slugpeak.bridge.frame;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads one frame at a time by its description. Whatever does not fit together is refused: two units, two prefixes, two
 * points, a digit of no known shape. Immutable; any thread may use it.
 */
final class FrameReader {

    private final FrameFormat format;

    FrameReader(FrameFormat format) {
        this.format = format;
    }

    /** Reads bytes of any number. */
    MeterFrame read(byte[] bytes) {
        Optional<byte[]> data =
                format.parity().isPresent() ? format.parity().get().data(bytes) : Optional.of(bytes);
        if (bytes.length != format.pattern().length()
                || data.isEmpty()
                || !format.pattern().fits(data.get())) {
            return new MeterFrame.Refused(false, "no frame");
        }
        if (format.checksum().isPresent() && !format.checksum().get().isRight(data.get())) {
            return new MeterFrame.Refused(true, "its checksum is wrong");
        }
        return framed(data.get());
    }

    private MeterFrame framed(byte[] frame) {
        Set<FrameMark> marks = EnumSet.noneOf(FrameMark.class);
        format.flags().forEach((bits, mark) -> {
            if (bits.of(frame) != 0) {
                marks.add(mark);
            }
        });
        for (Lookup table : format.tables()) {
            Optional<Meaning> meaning = table.isScale() ? Optional.of(Meaning.NONE) : table.of(frame);
            if (meaning.isEmpty()) {
                return new MeterFrame.Refused(true, "'" + table.place().of(frame) + "' is not in its table");
            }
            marks.addAll(meaning.get().marks());
        }
        Optional<String> shown = format.number().shown(frame);
        Optional<String> conflict = conflict(marks);
        if (conflict.isPresent() || shown.isEmpty()) {
            return new MeterFrame.Refused(true, conflict.orElse("a digit has no known shape"));
        }
        return measured(frame, marks, shown.get());
    }

    private static Optional<String> conflict(Set<FrameMark> marks) {
        for (FrameMark.Group group : FrameMark.Group.values()) {
            Set<FrameMark> both = of(marks, group);
            if (group.excludes() && both.size() > 1) {
                return Optional.of(
                        both.stream().map(FrameMark::words).collect(Collectors.joining(" and ")) + " at once");
            }
        }
        return marks.contains(FrameMark.IMPOSSIBLE) ? Optional.of("a bit is set that never is") : Optional.empty();
    }

    private MeterFrame measured(byte[] frame, Set<FrameMark> marks, String shown) {
        boolean digitsMeanNothing = marks.contains(FrameMark.VOLTS)
                && !of(marks, FrameMark.Group.LEVEL).isEmpty();
        if (!digitsMeanNothing && !format.number().mayBeShown(shown)) {
            return new MeterFrame.Refused(true, "'" + shown + "' is no number");
        }
        Set<FrameMark> modes = of(marks, FrameMark.Group.MODE);
        if (!modes.isEmpty()) {
            return new MeterFrame.Other(modes.iterator().next().words());
        }
        if (!marks.contains(FrameMark.VOLTS)) {
            Set<FrameMark> units = of(marks, FrameMark.Group.UNIT);
            return new MeterFrame.Other(
                    units.isEmpty()
                            ? "something without a unit"
                            : units.iterator().next().words());
        }
        Set<FrameMark> levels = of(marks, FrameMark.Group.LEVEL);
        boolean alternating = marks.contains(FrameMark.AC);
        if (!levels.isEmpty() || format.number().isOverload(shown)) {
            boolean over = levels.isEmpty() || levels.contains(FrameMark.OVERLOAD);
            return new MeterFrame.Beyond(over, alternating);
        }
        if (of(marks, FrameMark.Group.COUPLING).isEmpty()) {
            return new MeterFrame.Refused(true, "neither DC nor AC");
        }
        return format.number().isNumber(shown)
                ? volts(frame, marks, shown)
                : new MeterFrame.Refused(true, "'" + shown + "' is no number");
    }

    private MeterFrame volts(byte[] frame, Set<FrameMark> marks, String shown) {
        BigDecimal volts = new BigDecimal(shown);
        for (Lookup table : format.tables()) {
            Optional<Meaning> meaning = table.isScale() ? table.of(frame) : Optional.of(Meaning.NONE);
            if (meaning.isEmpty()) {
                return new MeterFrame.Refused(true, "range '" + table.place().of(frame) + "' does not exist for volts");
            }
            volts = volts.multiply(BigDecimal.valueOf(meaning.get().factor()));
        }
        for (FrameMark mark : marks) {
            volts = volts.multiply(BigDecimal.valueOf(mark.factor()));
        }
        String doubt = of(marks, FrameMark.Group.DOUBT).stream()
                .map(FrameMark::words)
                .findFirst()
                .orElse("");
        return new MeterFrame.Volts(
                (marks.contains(FrameMark.MINUS) ? volts.negate() : volts).doubleValue(),
                marks.contains(FrameMark.AC),
                doubt,
                marks.contains(FrameMark.LOW_BATTERY));
    }

    private static Set<FrameMark> of(Set<FrameMark> marks, FrameMark.Group group) {
        return marks.stream()
                .filter(each -> each.group() == group)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(FrameMark.class)));
    }
}

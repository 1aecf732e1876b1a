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
    Frame read(byte[] bytes) {
        Optional<byte[]> data =
                format.parity().isPresent() ? format.parity().get().data(bytes) : Optional.of(bytes);
        if (bytes.length != format.pattern().length()
                || data.isEmpty()
                || !format.pattern().fits(data.get())) {
            return new Frame.Refused(false, "no frame");
        }
        if (format.checksum().isPresent() && !format.checksum().get().isRight(data.get())) {
            return new Frame.Refused(true, "its checksum is wrong");
        }
        return framed(data.get());
    }

    private Frame framed(byte[] frame) {
        Set<Mark> marks = EnumSet.noneOf(Mark.class);
        format.flags().forEach((bits, mark) -> {
            if (bits.of(frame) != 0) {
                marks.add(mark);
            }
        });
        for (Lookup table : format.tables()) {
            Optional<Meaning> meaning = table.isScale() ? Optional.of(Meaning.NONE) : table.of(frame);
            if (meaning.isEmpty()) {
                return new Frame.Refused(true, "'" + table.place().of(frame) + "' is not in its table");
            }
            marks.addAll(meaning.get().marks());
        }
        Optional<String> shown = format.number().shown(frame);
        Optional<String> conflict = conflict(marks);
        if (conflict.isPresent() || shown.isEmpty()) {
            return new Frame.Refused(true, conflict.orElse("a digit has no known shape"));
        }
        return measured(frame, marks, shown.get());
    }

    private static Optional<String> conflict(Set<Mark> marks) {
        for (Mark.Group group : Mark.Group.values()) {
            Set<Mark> both = of(marks, group);
            if (group.excludes() && both.size() > 1) {
                return Optional.of(both.stream().map(Mark::words).collect(Collectors.joining(" and ")) + " at once");
            }
        }
        return marks.contains(Mark.IMPOSSIBLE) ? Optional.of("a bit is set that never is") : Optional.empty();
    }

    private Frame measured(byte[] frame, Set<Mark> marks, String shown) {
        boolean digitsMeanNothing =
                marks.contains(Mark.VOLTS) && !of(marks, Mark.Group.LEVEL).isEmpty();
        if (!digitsMeanNothing && !format.number().mayBeShown(shown)) {
            return new Frame.Refused(true, "'" + shown + "' is no number");
        }
        Set<Mark> modes = of(marks, Mark.Group.MODE);
        if (!modes.isEmpty()) {
            return new Frame.Other(modes.iterator().next().words());
        }
        if (!marks.contains(Mark.VOLTS)) {
            Set<Mark> units = of(marks, Mark.Group.UNIT);
            return new Frame.Other(
                    units.isEmpty()
                            ? "something without a unit"
                            : units.iterator().next().words());
        }
        Set<Mark> levels = of(marks, Mark.Group.LEVEL);
        boolean alternating = marks.contains(Mark.AC);
        if (!levels.isEmpty() || format.number().isOverload(shown)) {
            boolean over = levels.isEmpty() || levels.contains(Mark.OVERLOAD);
            return new Frame.Beyond(over, alternating);
        }
        if (of(marks, Mark.Group.COUPLING).isEmpty()) {
            return new Frame.Refused(true, "neither DC nor AC");
        }
        return format.number().isNumber(shown)
                ? volts(frame, marks, shown)
                : new Frame.Refused(true, "'" + shown + "' is no number");
    }

    private Frame volts(byte[] frame, Set<Mark> marks, String shown) {
        BigDecimal volts = new BigDecimal(shown);
        for (Lookup table : format.tables()) {
            Optional<Meaning> meaning = table.isScale() ? table.of(frame) : Optional.of(Meaning.NONE);
            if (meaning.isEmpty()) {
                return new Frame.Refused(true, "range '" + table.place().of(frame) + "' does not exist for volts");
            }
            volts = volts.multiply(BigDecimal.valueOf(meaning.get().factor()));
        }
        for (Mark mark : marks) {
            volts = volts.multiply(BigDecimal.valueOf(mark.factor()));
        }
        String doubt = of(marks, Mark.Group.DOUBT).stream()
                .map(Mark::words)
                .findFirst()
                .orElse("");
        return new Frame.Volts(
                (marks.contains(Mark.MINUS) ? volts.negate() : volts).doubleValue(),
                marks.contains(Mark.AC),
                doubt,
                marks.contains(Mark.LOW_BATTERY));
    }

    private static Set<Mark> of(Set<Mark> marks, Mark.Group group) {
        return marks.stream()
                .filter(each -> each.group() == group)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Mark.class)));
    }
}

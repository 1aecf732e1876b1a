package org.slugpeak.bridge.frame;

import org.slugpeak.core.word.Coded;

/** What a bit or a code of a frame can mean, as descriptions name it: lower case, hyphens. Immutable. */
enum FrameMark {
    /** DC is shown. */
    DC(Group.COUPLING, "DC"),
    /** AC is shown. */
    AC(Group.COUPLING, "AC"),
    /** Volts. */
    VOLTS(Group.UNIT, "volts"),
    /** Amperes. */
    AMPERES(Group.UNIT, "amperes"),
    /** Ohms. */
    OHMS(Group.UNIT, "ohms"),
    /** Hertz. */
    HERTZ(Group.UNIT, "hertz"),
    /** Farads. */
    FARADS(Group.UNIT, "farads"),
    /** Per cent: a duty cycle. */
    PERCENT(Group.UNIT, "per cent"),
    /** Degrees of temperature. */
    DEGREES(Group.UNIT, "degrees"),
    /** Decibels. */
    DECIBELS(Group.UNIT, "decibels"),
    /** Watts. */
    WATTS(Group.UNIT, "watts"),
    /** Gain of a transistor. */
    GAIN(Group.UNIT, "transistor gain"),
    /** Diode test: volts, but of the meter's own current. */
    DIODE(Group.MODE, "the diode test"),
    /** Continuity. */
    CONTINUITY(Group.MODE, "the continuity test"),
    /** The frequency is shown though the dial stands on volts. */
    FREQUENCY_OF_INPUT(Group.MODE, "the frequency of the input"),
    /** An input for adapters, whose scale is not known. */
    ADAPTER(Group.MODE, "an adapter input"),
    /** Logic test. */
    LOGIC(Group.MODE, "the logic test"),
    /** The date and the time. */
    CLOCK(Group.MODE, "its clock"),
    /** Something else. */
    OTHER(Group.MODE, "another quantity"),
    /** A thousand millionth. */
    NANO(Group.PREFIX, 1e-9),
    /** A millionth. */
    MICRO(Group.PREFIX, 1e-6),
    /** A thousandth. */
    MILLI(Group.PREFIX, 1e-3),
    /** A thousand. */
    KILO(Group.PREFIX, 1e3),
    /** A million. */
    MEGA(Group.PREFIX, 1e6),
    /** One digit behind the point. */
    ONE_DECIMAL(Group.POINT, 1e-1),
    /** Two digits behind the point. */
    TWO_DECIMALS(Group.POINT, 1e-2),
    /** Three digits behind the point. */
    THREE_DECIMALS(Group.POINT, 1e-3),
    /** Four digits behind the point. */
    FOUR_DECIMALS(Group.POINT, 1e-4),
    /** The value is frozen, or should be. */
    HOLD(Group.DOUBT, "is on HOLD: press HOLD again"),
    /** A difference is shown. */
    REL(Group.DOUBT, "shows a difference (REL): press REL again"),
    /** An old extreme. */
    MAX(Group.DOUBT, "shows a maximum (MAX): leave MIN/MAX"),
    /** An old extreme. */
    MIN(Group.DOUBT, "shows a minimum (MIN): leave MIN/MAX"),
    /** One of both. */
    MIN_MAX(Group.DOUBT, "is in MIN/MAX: leave it"),
    /** A peak. */
    PEAK(Group.DOUBT, "shows a peak value: leave PEAK"),
    /** High frequencies are cut. */
    FILTER(Group.DOUBT, "has its low-pass filter on: turn it off"),
    /** Neither pure DC nor pure AC. */
    AC_AND_DC(Group.DOUBT, "reads AC and DC together: choose one"),
    /** Another value than the one that is meant. */
    SECOND_DISPLAY(Group.DOUBT, "sends its second display: let it send the first"),
    /** A sign that means one thing on one meter and another on the next. */
    UNKNOWN_SIGN(
            Group.DOUBT, "shows a sign that differs from meter to meter, MAX or MIN on some: press the last key again"),
    /** Over the range. */
    OVERLOAD(Group.LEVEL, "over the range"),
    /** Under the range. */
    UNDERLOAD(Group.LEVEL, "under the range"),
    /** Offset too large. */
    OFFSET(Group.LEVEL, "offset too large"),
    /** Below zero. */
    MINUS(Group.NONE, "minus"),
    /** The battery is low. */
    LOW_BATTERY(Group.NONE, "low battery"),
    /** Never set in a sound frame. */
    IMPOSSIBLE(Group.NONE, "a mark that is never set");

    /** Of those that exclude each other at most one can be set. */
    enum Group {
        /** DC or AC. */
        COUPLING,
        /** What the number counts. */
        UNIT,
        /** What the meter does instead of reading a voltage. */
        MODE,
        /** By how much the number is multiplied. */
        PREFIX,
        /** Where the decimal point stands. */
        POINT,
        /** Why the number is no live reading. */
        DOUBT,
        /** Why there is no number. */
        LEVEL,
        /** None. */
        NONE;

        boolean excludes() {
            return this == COUPLING || this == UNIT || this == PREFIX || this == POINT;
        }
    }

    private final Group group;
    private final String words;
    private final double factor;

    FrameMark(Group group, String words) {
        this.group = group;
        this.words = words;
        this.factor = 1;
    }

    FrameMark(Group group, double factor) {
        this.group = group;
        this.words = "a factor of " + factor;
        this.factor = factor;
    }

    Group group() {
        return group;
    }

    /** For the user. */
    String words() {
        return words;
    }

    double factor() {
        return factor;
    }

    /** As descriptions write it. */
    String code() {
        return Coded.of(this);
    }
}

package org.slugpeak.bridge.scpi;

import java.util.OptionalLong;
import org.slugpeak.bridge.source.Outlet;

/** One part of the talk with a meter: what is sent when it begins, and what each answer or silence leads to. */
interface Phase {

    /** Sends what this part begins with. */
    void enter(long nowNanos, Outlet out);

    /** Takes one line from the meter; gives the part that comes next, or this one. */
    Phase line(String text, long nowNanos, Outlet out);

    /** The time given by {@link #dueNanos} has come; gives the part that comes next, or this one. */
    Phase silence(long nowNanos, Outlet out);

    /** Something came that could not be read: the answer that was awaited may be lost. */
    default void damaged(long nowNanos) {}

    /** When the patience of this part ends. */
    OptionalLong dueNanos();
}

package org.slugpeak.core.progress;

import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import org.slugpeak.core.level.MeterScale;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.SignalPath;
import org.slugpeak.core.session.HeardScale;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Untimed;
import org.slugpeak.core.session.Work;

/**
 * What all phases of the work share: where it is, what is connected, how the reading has stood of late, and what is still to be
 * ordered. One thread at a time.
 */
final class Job {

    /** The reading of one second before the hand leaves is compared with one second after. */
    static final long COMPARE_NANOS = 1_000_000_000L;

    /** While a hand leaves, the reading moves less than this, dB. */
    private static final double STAND_DB = 0.5;

    private final Route route;
    private final Connections connections = new Connections();
    private final Preliminaries preliminaries = new Preliminaries();
    private final Feeding feeding = new Feeding();
    private final CouplingWatch coupling = new CouplingWatch();
    private final SteadyWatch lastSecond = new SteadyWatch(COMPARE_NANOS, STAND_DB);
    private final SteadyWatch lastSecondStraight = new SteadyWatch(COMPARE_NANOS, STAND_DB);
    private final HeardScale heard = new HeardScale();
    private final Queue<Order> orders = new ArrayDeque<>();
    private long nowNanos;
    private double present = Double.NaN;
    private String path = "";

    Job(Plan plan) {
        route = new Route(plan);
    }

    /** Time comes with the records. */
    void at(long tNanos) {
        nowNanos = tNanos;
    }

    long nowNanos() {
        return nowNanos;
    }

    /** A trusted reading. */
    void see(ReadingTaken it) {
        present = it.smoothed();
        lastSecond.see(nowNanos, present);
        lastSecondStraight.see(nowNanos, scale().straight(present));
    }

    /** Of whatever happens only what makes the meter's scale another one. */
    void hear(SessionRecord record) {
        heard.take(record);
    }

    /** What readings mean at present. */
    MeterScale scale() {
        return heard.scale();
    }

    /** The last reading, above rest, in the unit of the readings, of either sign. */
    double riseVolts() {
        return scale().aboveRest(present);
    }

    /** What a straight detector without a rest would show of a magnitude that is read with the sign of the last reading. */
    double straightMagnitude(double read) {
        return Math.abs(scale().straight(Math.copySign(read, present)));
    }

    Route route() {
        return route;
    }

    Connections connections() {
        return connections;
    }

    Preliminaries preliminaries() {
        return preliminaries;
    }

    Feeding feeding() {
        return feeding;
    }

    CouplingWatch coupling() {
        return coupling;
    }

    /** How the reading has stood for the last second. */
    SteadyWatch lastSecond() {
        return lastSecond;
    }

    /** The same as a straight detector without a rest would show it. */
    SteadyWatch lastSecondStraight() {
        return lastSecondStraight;
    }

    /** The signal of the present step goes this way; told where it did not before. */
    void tellPath() {
        String here = SignalPath.of(route.stage(), route.step());
        if (!here.equals(path)) {
            path = here;
            say(at -> new Work.PathBegun(at, here));
        }
    }

    void order(Order order) {
        orders.add(order);
    }

    void say(Untimed what) {
        order(new Order.Say(what));
    }

    Optional<Order> nextOrder() {
        return Optional.ofNullable(orders.poll());
    }

    /** Nothing of what came before is still to be done, and nothing is known to be connected. */
    void startAfresh() {
        orders.clear();
        path = "";
        connections.forget();
    }
}

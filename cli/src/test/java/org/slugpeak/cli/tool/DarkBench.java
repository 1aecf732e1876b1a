package org.slugpeak.cli.tool;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.locks.LockSupport;
import org.slugpeak.bridge.testkit.ScpiMeter;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.bridge.testkit.TcpBench;

/**
 * A set with two adjusters and a meter on the network, and the hand of somebody who sees nothing: it turns what it is told to, as time goes
 * by. Any thread may use it.
 */
final class DarkBench implements AutoCloseable {

    private static final long MAINS_PERIOD_NANOS = 20_000_000;

    /** Half-widths of the response a second. */
    private static final double TURNING = 0.25;

    private static final double CREEPING = 0.12;

    private static final double REACTION_SECONDS = 0.4;
    private static final double TOP_VOLTS = 0.7;
    private static final double REST_VOLTS = 0.004;
    private static final double NOISE = 1e-3;

    private final SplittableRandom random = new SplittableRandom(1904);
    private final TcpBench meter = TcpBench.of(ScpiResponder.of(
            ScpiMeter.identifiedAs("EMBER FELL INSTRUMENTS,BM-450,0,1.07").answering("READ?", this::read)));
    private final Map<String, Double> halfWidthsOff = new LinkedHashMap<>();
    private String held = "";
    private double speed;
    private double secondsLeft = Double.POSITIVE_INFINITY;
    private long lastNanos = System.nanoTime();
    private double generator = 1;

    /** Each adjuster stands a decibel off, on one side or the other. */
    DarkBench(String first, String second) {
        halfWidthsOff.put(first, -0.55);
        halfWidthsOff.put(second, 0.55);
    }

    String address() {
        return "tcp:localhost:" + meter.port();
    }

    /** A meter needs a period of the mains for each of its readings. */
    private String read() {
        LockSupport.parkNanos(MAINS_PERIOD_NANOS);
        return String.format(Locale.ROOT, "%.6E", volts());
    }

    private synchronized double volts() {
        long nowNanos = System.nanoTime();
        double turned = Math.min((nowNanos - lastNanos) / 1e9, secondsLeft);
        lastNanos = nowNanos;
        secondsLeft -= turned;
        halfWidthsOff.computeIfPresent(held, (name, off) -> off + speed * turned);
        double level = generator * TOP_VOLTS * (1 + NOISE * random.nextGaussian());
        for (double off : halfWidthsOff.values()) {
            level /= Math.hypot(1, off);
        }
        return REST_VOLTS + level;
    }

    /** Begins to turn, the wrong way, so that there is something to be told. */
    synchronized void turn(String name) {
        held = name;
        turn(Math.copySign(TURNING, halfWidthsOff.getOrDefault(name, 0.0)));
    }

    private void turn(double halfWidthsASecond) {
        speed = halfWidthsASecond;
        secondsLeft = Double.POSITIVE_INFINITY;
    }

    synchronized void otherWay() {
        turn(-speed);
    }

    synchronized void back() {
        turn(-Math.copySign(CREEPING, speed));
    }

    /** Nobody stops at once. */
    synchronized void stop() {
        secondsLeft = REACTION_SECONDS;
    }

    /** A little, the way it was turned last. */
    synchronized void turnOn() {
        secondsLeft = REACTION_SECONDS;
    }

    synchronized void generator(double share) {
        generator = share;
    }

    /** How far the worst of them is from the peak, dB. */
    synchronized double lostDb() {
        return halfWidthsOff.values().stream()
                .mapToDouble(off -> 20 * Math.log10(Math.hypot(1, off)))
                .max()
                .orElseThrow();
    }

    @Override
    public void close() {
        meter.close();
    }
}

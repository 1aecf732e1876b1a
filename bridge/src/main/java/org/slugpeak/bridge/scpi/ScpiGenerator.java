package org.slugpeak.bridge.scpi;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.Carrier;
import org.slugpeak.bridge.source.CarrierEvent;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.LineSplitter;
import org.slugpeak.bridge.source.PortLost;
import org.slugpeak.bridge.time.Ticker;

/**
 * A signal generator that obeys SCPI-1999: its frequency is set with {@code SOURce:FREQuency}, read back, and where it does not
 * come back as it was set the error queue says why. Level, modulation and the output switch stay as the user left them. Each
 * call waits for the answer, at most two seconds. One thread at a time.
 */
public final class ScpiGenerator implements AutoCloseable {

    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(2);

    /** Generators round to their own steps; more than this share is another frequency. */
    private static final double SAME_SHARE = 1e-4;

    private static final String FREQUENCY = "SOURce:FREQuency";
    private static final String LINE_END = "\n";

    private final Carrier carrier;
    private final Ticker ticker;
    private final LineSplitter splitter = new LineSplitter();
    private final Deque<String> lines = new ArrayDeque<>();
    private boolean lost;
    private String name = "generator";

    /**
     * A generator at the other end of a carrier.
     *
     * @param carrier closed with this
     * @param ticker the clock of the waiting
     */
    public ScpiGenerator(Carrier carrier, Ticker ticker) {
        this.carrier = carrier;
        this.ticker = ticker;
    }

    /**
     * Asks who it is.
     *
     * @return its name
     * @throws BridgeException where it does not answer
     */
    public String identify() throws BridgeException {
        Optional<String> first = ask(ScpiDialect.IDENTIFY);
        // The greeting of a generator that has just been woken may have swallowed the first question.
        Optional<String> answer = first.isPresent() ? first : ask(ScpiDialect.IDENTIFY);
        name = Identity.of(answer.orElseThrow(this::silent)).name();
        return name;
    }

    /**
     * Sets the frequency.
     *
     * @param hz wanted, Hz, positive
     * @return what the generator says it is, Hz
     * @throws BridgeException where it does not answer, or refuses
     */
    public double frequency(double hz) throws BridgeException {
        lines.clear();
        send(FREQUENCY + " " + BigDecimal.valueOf(hz).stripTrailingZeros().toPlainString());
        String answer = ask(FREQUENCY + "?").orElseThrow(this::silent);
        Optional<Double> isHz = number(answer);
        if (isHz.isPresent() && Math.abs(isHz.get() - hz) <= SAME_SHARE * hz) {
            return isHz.get();
        }
        String why = ask(ScpiDialect.ERROR)
                .flatMap(ScpiError::parse)
                .filter(error -> !error.isNone())
                .map(error -> " (" + error + ")")
                .orElse("");
        throw new BadConfiguration(name + " on " + carrier.name() + " does not go to " + plain(hz) + " kHz but says '"
                + answer + "'" + why + ": choose another --span, or set the generator by hand without --generator");
    }

    private static Optional<Double> number(String answer) {
        try {
            return Optional.of(Double.parseDouble(answer));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static String plain(double hz) {
        return BigDecimal.valueOf(hz).movePointLeft(3).stripTrailingZeros().toPlainString();
    }

    private BridgeException silent() {
        return new PortLost(
                lost
                        ? name + " on " + carrier.name()
                                + " has gone: plug it in again and start anew; the points so far are kept"
                        : name + " on " + carrier.name()
                                + " does not answer: is it switched on and set to remote, is the"
                                + " cable right, is --generator-baud its speed? The points so far are kept");
    }

    private void send(String message) {
        carrier.send((message + LINE_END).getBytes(StandardCharsets.US_ASCII));
    }

    /** The next line after a question that is not its echo. */
    private Optional<String> ask(String question) {
        send(question);
        long endNanos = ticker.nowNanos() + PATIENCE_NANOS;
        while (!lost && ticker.nowNanos() < endNanos) {
            carrier.await(endNanos - ticker.nowNanos()).ifPresent(event -> event.match(new Hearing()));
            while (!lines.isEmpty()) {
                String line = lines.remove();
                if (!line.equalsIgnoreCase(question)) {
                    return Optional.of(line);
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public void close() {
        carrier.close();
    }

    private final class Hearing implements CarrierEvent.Matcher, LineSplitter.Taker {

        @Override
        public void opened(CarrierEvent.Opened event) {
            splitter.begin();
        }

        @Override
        public void bytes(CarrierEvent.Bytes event) {
            splitter.accept(event.bytes(), event.bytes().length, this);
        }

        @Override
        public void lost(CarrierEvent.Lost event) {
            lost = true;
        }

        @Override
        public void line(String text, boolean whole) {
            lines.add(text);
        }

        @Override
        public void garbled(Garble kind, String problem) {
            // Noise on the line: the answer is waited for until patience ends.
        }
    }
}

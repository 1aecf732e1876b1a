package org.slugpeak.bridge.testkit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * An invented bench meter that understands SCPI: a message in, an answer or nothing out, errors into a queue. It does no
 * input or output. One thread at a time.
 */
public final class ScpiMeter {

    /** The text of each error is that of SCPI-1999 volume 2 section 21.8. */
    private static final String UNDEFINED_HEADER = "-113,\"Undefined header\"";

    private static final String OUT_OF_RANGE = "-222,\"Data out of range\"";
    private static final double LARGEST_RANGE = 1000;

    private final Map<ScpiHeader, Function<String, String>> queries = new LinkedHashMap<>();
    private final Map<ScpiHeader, Function<String, Optional<String>>> obeyed = new LinkedHashMap<>();
    private final List<ScpiHeader> commands = new ArrayList<>();
    private final Deque<String> errors = new ArrayDeque<>();
    private final List<String> messages = new ArrayList<>();
    private String noError = "0,\"No error\"";

    private ScpiMeter(String identity) {
        queries.put(new ScpiHeader("*IDN?"), any -> identity);
        queries.put(
                new ScpiHeader("SYSTem:ERRor?"),
                any -> Optional.ofNullable(errors.poll()).orElse(noError));
        commands.add(new ScpiHeader("SYSTem:REMote"));
        commands.add(new ScpiHeader("SYSTem:LOCal"));
        commands.add(new ScpiHeader("CONFigure:VOLTage:DC"));
        commands.add(new ScpiHeader("CONFigure:VOLTage:AC"));
        commands.add(new ScpiHeader("VOLTage:DC:RANGe"));
        commands.add(new ScpiHeader("VOLTage:AC:RANGe"));
    }

    /**
     * A meter that gives no reading yet.
     *
     * @param identity what it answers to {@code *IDN?}
     * @return the meter
     */
    public static ScpiMeter identifiedAs(String identity) {
        return new ScpiMeter(identity);
    }

    /**
     * Lets it answer a question.
     *
     * @param header for example {@code MEASure:VOLTage:DC?}
     * @param answers gives the next answer without its end
     * @return this
     */
    public ScpiMeter answering(String header, Supplier<String> answers) {
        return answeringWith(header, any -> answers.get());
    }

    /**
     * Lets it answer a question that has an argument.
     *
     * @param header for example {@code SOURce:FREQuency?}
     * @param answers gives the answer to an argument, empty where there is none, without its end
     * @return this
     */
    public ScpiMeter answeringWith(String header, Function<String, String> answers) {
        queries.put(new ScpiHeader(header), answers);
        return this;
    }

    /**
     * Lets it answer a question, again and again, from a list.
     *
     * @param header for example {@code READ?}
     * @param answers given in turn, the last one for ever
     * @return this
     */
    public ScpiMeter answering(String header, String... answers) {
        Deque<String> left = new ArrayDeque<>(List.of(answers));
        return answering(header, () -> left.size() > 1 ? left.remove() : left.element());
    }

    /**
     * Lets it obey a command.
     *
     * @param header for example {@code SOURce:FREQuency}
     * @param obey gets the argument, and gives the error that it leads to
     * @return this
     */
    public ScpiMeter obeying(String header, Function<String, Optional<String>> obey) {
        obeyed.put(new ScpiHeader(header), obey);
        return this;
    }

    /**
     * Lets it write the empty error queue in another way.
     *
     * @param text for example {@code +0,"No error"}
     * @return this
     */
    public ScpiMeter writingNoErrorAs(String text) {
        noError = text;
        return this;
    }

    /**
     * Takes a message.
     *
     * @param message without its end
     * @return the answer without its end
     */
    public Optional<String> take(String message) {
        messages.add(message);
        String[] parts = message.strip().split("\\s+", 2);
        for (Map.Entry<ScpiHeader, Function<String, String>> each : queries.entrySet()) {
            if (each.getKey().matches(parts[0])) {
                return Optional.of(each.getValue().apply(parts.length > 1 ? parts[1] : ""));
            }
        }
        command(parts);
        return Optional.empty();
    }

    /**
     * What it was sent.
     *
     * @return in order
     */
    public List<String> messages() {
        return List.copyOf(messages);
    }

    private void command(String[] parts) {
        for (Map.Entry<ScpiHeader, Function<String, Optional<String>>> each : obeyed.entrySet()) {
            if (each.getKey().matches(parts[0])) {
                each.getValue().apply(parts.length > 1 ? parts[1] : "").ifPresent(errors::add);
                return;
            }
        }
        if (commands.stream().noneMatch(each -> each.matches(parts[0]))) {
            errors.add(UNDEFINED_HEADER);
        } else if (parts.length > 1 && Double.parseDouble(parts[1]) > LARGEST_RANGE) {
            errors.add(OUT_OF_RANGE);
        }
    }
}

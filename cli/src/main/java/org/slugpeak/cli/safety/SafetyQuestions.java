package org.slugpeak.cli.safety;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.cli.display.Console;
import org.slugpeak.cli.words.SafetyWords;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.SafetyAnswers;

/** Asks the four safety questions of a person at a terminal. One thread at a time. */
public final class SafetyQuestions {

    private static final Map<String, Boolean> YES_NO = Map.of("yes", true, "y", true, "no", false, "n", false);
    private static final Map<String, Chassis> CHASSIS = Map.of(
            "transformer",
            Chassis.TRANSFORMER,
            "t",
            Chassis.TRANSFORMER,
            "live",
            Chassis.LIVE,
            "l",
            Chassis.LIVE,
            "unknown",
            Chassis.UNKNOWN,
            "u",
            Chassis.UNKNOWN);

    private final BufferedReader in;
    private final PrintWriter out;

    SafetyQuestions(BufferedReader in, PrintWriter out) {
        this.in = in;
        this.out = out;
    }

    /** Empty where nobody sits at a terminal. */
    public static Optional<SafetyQuestions> atTerminal() {
        if (!Console.isDialogue()) {
            return Optional.empty();
        }
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
        return Optional.of(new SafetyQuestions(in, new PrintWriter(System.err, true, Charset.defaultCharset())));
    }

    /** The lines for the record; refused where danger remains and the user gives no reason to go on. */
    List<String> ask() throws BadConfiguration {
        out.println("A valve radio can kill, and local codes and licensed practice come first. Four questions:");
        SafetyAnswers answers = new SafetyAnswers(
                ask(
                        "1. Has the set a mains transformer of two separate windings, or is its chassis live (AC/DC set,"
                                + " autotransformer)? (transformer, live, unknown) ",
                        CHASSIS),
                ask("2. Is the set alone on an isolation transformer? (yes, no) ", YES_NO),
                ask(
                        "3. Does any lead earth the set: computer, generator, oscilloscope? No: isolated port or laptop on"
                                + " its battery, generator on a battery or behind Y1 capacitors in both wires. (yes, no) ",
                        YES_NO),
                ask(
                        "4. Is there a blocking capacitor in the generator's lead, and a divider or resistor, no capacitor,"
                                + " in the meter's? (yes, no) ",
                        YES_NO));
        if (answers.dangers().isEmpty()) {
            return lines(answers, Optional.empty());
        }
        SafetyWords.dangers(answers).forEach(danger -> out.println("DANGER: " + danger));
        String reason = line("Go on all the same? Give your reason for the record, or press Enter to stop: ");
        if (reason.isEmpty()) {
            throw new BadConfiguration("not begun: " + String.join("; ", SafetyWords.dangers(answers)));
        }
        return lines(answers, Optional.of(reason));
    }

    private <T> T ask(String question, Map<String, T> choices) throws BadConfiguration {
        for (String said = line(question); ; said = line(question)) {
            Optional<T> choice = Optional.ofNullable(choices.get(said.toLowerCase(Locale.ROOT)));
            if (choice.isPresent()) {
                return choice.get();
            }
        }
    }

    private String line(String question) throws BadConfiguration {
        out.print(question);
        out.flush();
        try {
            String line = in.readLine();
            if (line == null) {
                throw new BadConfiguration("not begun: the safety questions were not answered");
            }
            return line.strip();
        } catch (IOException e) {
            throw new BadConfiguration("not begun: the safety questions were not answered", e);
        }
    }

    /** Answers, what danger is left, and the reason to go on all the same, as they stand in the record. */
    static List<String> lines(SafetyAnswers answers, Optional<String> reason) {
        List<String> lines = new ArrayList<>(SafetyWords.lines(answers));
        SafetyWords.dangers(answers).forEach(danger -> lines.add("danger not removed: " + danger));
        reason.ifPresent(why -> lines.add(declined(why)));
        return lines;
    }

    static String declined(String reason) {
        return "declined: " + reason;
    }
}

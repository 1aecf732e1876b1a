package org.slugpeak.cli.safety;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.cli.display.Console;
import org.slugpeak.cli.display.Wrapped;
import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.cli.words.ReportFact;
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
    /** No word of a question is broken at the edge of a window of the usual width. */
    private static final int COLUMNS = 79;

    private final PrintWriter out;
    private final Consumer<String> voice;

    SafetyQuestions(BufferedReader in, PrintWriter out, Consumer<String> voice) {
        this.voice = voice;
        this.in = in;
        this.out = out;
    }

    /**
     * Empty where nobody sits at a terminal.
     *
     * @param voice speaks each question, too
     */
    public static Optional<SafetyQuestions> atTerminal(Consumer<String> voice) {
        if (!Console.isDialogue()) {
            return Optional.empty();
        }
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
        return Optional.of(new SafetyQuestions(in, new PrintWriter(System.err, true, Charset.defaultCharset()), voice));
    }

    /** The lines for the record; refused where danger remains and the user gives no reason to go on. */
    List<String> ask() throws BadConfiguration {
        Wrapped.text(AskPhrase.FOUR_QUESTIONS.of(), COLUMNS).forEach(out::println);
        SafetyAnswers answers = new SafetyAnswers(
                ask(AskPhrase.FOUR_QUESTIONS.of() + " ", AskPhrase.CHASSIS, CHASSIS),
                ask("", AskPhrase.ISOLATED, YES_NO),
                ask("", AskPhrase.EARTHED, YES_NO),
                ask("", AskPhrase.BLOCKING, YES_NO));
        if (answers.dangers().isEmpty()) {
            return lines(answers, Optional.empty());
        }
        List<String> dangers = SafetyWords.dangers(answers).stream()
                .map(danger -> AskPhrase.DANGER.of(danger))
                .toList();
        dangers.forEach(danger -> Wrapped.text(danger, COLUMNS).forEach(out::println));
        String reason = line(String.join("; ", dangers) + "; ", AskPhrase.GO_ON);
        if (reason.isEmpty()) {
            throw new BadConfiguration("not begun: " + String.join("; ", SafetyWords.dangers(answers)));
        }
        return lines(answers, Optional.of(reason));
    }

    private <T> T ask(String heardFirst, AskPhrase question, Map<String, T> choices) throws BadConfiguration {
        String first = heardFirst;
        while (true) {
            String said = line(first, question);
            Optional<T> choice = Optional.ofNullable(choices.get(said.toLowerCase(Locale.ROOT)));
            if (choice.isPresent()) {
                return choice.get();
            }
            first = said.isEmpty() ? "" : none(said);
        }
    }

    /** What was typed is no answer: seen at once, and heard before the question that comes again. */
    private String none(String said) {
        String none = AskPhrase.NO_SUCH_ANSWER.of(said);
        out.println(none);
        return none + ". ";
    }

    /**
     * Asks for facts of the set; whoever presses Enter is asked no more of that one.
     *
     * @param facts which ones
     * @return those that were told
     */
    public Map<ReportFact, String> facts(List<ReportFact> facts) throws BadConfiguration {
        Map<ReportFact, String> told = new EnumMap<>(ReportFact.class);
        for (ReportFact fact : facts) {
            voice.accept(AskPhrase.FACT.of(fact.of()));
            answer(AskPhrase.FACT.of(fact.of()))
                    .filter(text -> !text.isEmpty())
                    .ifPresent(text -> told.put(fact, text));
        }
        return told;
    }

    private String line(String heardFirst, AskPhrase question) throws BadConfiguration {
        voice.accept(heardFirst + question.of());
        return answer(question.of())
                .orElseThrow(() -> new BadConfiguration("not begun: the safety questions were not answered"));
    }

    /** Empty at the end of the input. */
    private Optional<String> answer(String question) throws BadConfiguration {
        out.print(String.join(System.lineSeparator(), Wrapped.text(question, COLUMNS)) + " ");
        out.flush();
        try {
            return Optional.ofNullable(in.readLine()).map(String::strip);
        } catch (IOException e) {
            throw new BadConfiguration("not begun: the questions were not answered (" + e.getMessage() + ")", e);
        }
    }

    /** Answers, what danger is left, and the reason to go on all the same, as they stand in the record. */
    static List<String> lines(SafetyAnswers answers, Optional<String> reason) {
        List<String> lines = new ArrayList<>(SafetyWords.lines(answers));
        SafetyWords.dangers(answers).forEach(danger -> lines.add(AskPhrase.NOT_REMOVED.of(danger)));
        reason.ifPresent(why -> lines.add(declined(why)));
        return lines;
    }

    static String declined(String reason) {
        return AskPhrase.DECLINED.of(reason);
    }
}

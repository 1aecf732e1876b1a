package org.slugpeak.cli.safety;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.cli.words.SafetyWords;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.SafetyAnswers;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The safety questions: answered here, or declined with a reason that stands in the record. */
public final class SafetyOptions {

    @Option(names = "--chassis", paramLabel = "transformer|live|unknown")
    private String chassis = "";

    @Option(names = "--isolated", paramLabel = "yes|no")
    private String isolated = "";

    @Option(names = "--earthed", paramLabel = "yes|no")
    private String earthed = "";

    @Option(names = "--blocking", paramLabel = "yes|no")
    private String blocking = "";

    @Option(names = "--decline", paramLabel = "REASON")
    private Optional<String> reason = Optional.empty();

    /**
     * The lines for the record; refuses to begin where answers are missing or dangerous and nobody declined.
     *
     * @param questions asks for what was not said, where a person sits at a terminal
     */
    public List<String> answered(CommandLine command, Optional<SafetyQuestions> questions) throws BadConfiguration {
        if (isOpen() && questions.isPresent()) {
            return questions.get().ask();
        }
        if (isOpen()) {
            throw new ParameterException(
                    command,
                    "answer the safety questions first: --chassis transformer|live|unknown --isolated yes|no"
                            + " --earthed yes|no --blocking yes|no; or --decline REASON");
        }
        return isComplete() ? lines(answers(command)) : List.of(SafetyQuestions.declined(reason.orElseThrow()));
    }

    /** Whether anything is left to be asked of a person. */
    public boolean isOpen() {
        return !isComplete() && reason.isEmpty();
    }

    private boolean isComplete() {
        return !chassis.isEmpty() && !isolated.isEmpty() && !earthed.isEmpty() && !blocking.isEmpty();
    }

    private SafetyAnswers answers(CommandLine command) {
        return new SafetyAnswers(
                chassis(command), yes(command, isolated), yes(command, earthed), yes(command, blocking));
    }

    private List<String> lines(SafetyAnswers answers) throws BadConfiguration {
        if (!answers.dangers().isEmpty() && reason.isEmpty()) {
            throw new BadConfiguration("DANGER: " + String.join("; ", SafetyWords.dangers(answers))
                    + "; or --decline REASON, which is recorded");
        }
        return SafetyQuestions.lines(answers, reason);
    }

    private Chassis chassis(CommandLine command) {
        for (Chassis each : Chassis.values()) {
            if (each.code().equals(chassis.toLowerCase(Locale.ROOT))) {
                return each;
            }
        }
        throw new ParameterException(command, "--chassis takes transformer, live or unknown, not " + chassis);
    }

    private static boolean yes(CommandLine command, String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw new ParameterException(command, "say yes or no, not " + word);
        };
    }
}

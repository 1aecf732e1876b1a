package org.slugpeak.bridge.generator;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.slugpeak.bridge.instrument.Identity;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.PortLost;
import org.slugpeak.bridge.text.SafeText;

/**
 * Orders to a generator, with what it answers: an answer that does not come is asked for once more, and what it refuses becomes one
 * line for the user. One thread at a time.
 */
final class GeneratorDialogue {

    /** A late answer to the question before is taken for this one's; the next is right. */
    private static final int TRIES = 3;

    /** Whoever leaves has three seconds in all. */
    private static final long LEAVING_PATIENCE_NANOS = TimeUnit.MILLISECONDS.toNanos(300);

    private final TalkForm form;
    private final String hint;
    private final GeneratorTalk talk;
    private String name;
    private long patienceNanos;

    GeneratorDialogue(GeneratorDescription description, GeneratorTalk talk) {
        this.form = description.talk();
        this.hint = description.hint();
        this.talk = talk;
        this.name = description.title();
        this.patienceNanos = form.patienceNanos();
    }

    String name() {
        return name;
    }

    void greet() throws BridgeException {
        talk.awaitOpening(patienceNanos);
        sayGreeting();
        if (form.identify().isPresent()) {
            name = Identity.of(ask(form.identify().get(), any -> true)).name();
        }
    }

    /** With the limits that it tells of itself; as they were where it tells none that can be. */
    NumberLines limited(NumberLines lines) {
        Optional<NumberLines.Limits> ask = lines.limits();
        Optional<Double> low = ask.flatMap(limits -> told(limits.askLowest(), limits.answer()));
        Optional<Double> high = low.isEmpty() ? low : ask.flatMap(limits -> told(limits.askHighest(), limits.answer()));
        boolean canBe = low.isPresent() && high.isPresent() && low.get() < high.get();
        return canBe ? lines.between(low.get(), high.get()) : lines;
    }

    /** Asked once: many do not know the question. */
    private Optional<Double> told(String question, AnswerForm answer) {
        return talk.exchange(question, answer::fits, patienceNanos).flatMap(answer::number);
    }

    void hurry() {
        patienceNanos = Math.min(patienceNanos, LEAVING_PATIENCE_NANOS);
    }

    /** Sent once more it clears what was not understood meanwhile. */
    void sayGreeting() {
        form.greeting().forEach(talk::send);
    }

    void sayFarewell() {
        form.farewell().forEach(talk::send);
    }

    String ask(String question, Predicate<String> fits) throws BridgeException {
        return heard(question, fits).orElseThrow(this::silent);
    }

    private Optional<String> heard(String question, Predicate<String> fits) {
        return talk.exchange(question, fits, patienceNanos).or(() -> talk.exchange(question, fits, patienceNanos));
    }

    /** A line that asks nothing; where it is acknowledged, that is waited for. */
    void order(String line) throws BridgeException {
        Optional<AnswerForm> acknowledged = form.acknowledged();
        if (acknowledged.isEmpty()) {
            talk.send(line);
            return;
        }
        String answer = ask(line, it -> acknowledged.get().fits(it) || isRefusal(it));
        if (isRefusal(answer)) {
            throw refusal("answers '" + answer + "' to '" + line + "'");
        }
    }

    void orderAll(List<String> lines) throws BridgeException {
        for (String line : lines) {
            order(line);
        }
    }

    private boolean isRefusal(String line) {
        return form.refused().stream().anyMatch(each -> each.fits(line));
    }

    /** What it says of a number. */
    double read(NumberLines.Question question) throws BridgeException {
        return question.answer()
                .number(ask(question.ask(), line -> question.answer().fits(line)))
                .orElseThrow();
    }

    boolean read(SwitchLines.Question question) throws BridgeException {
        return question.read(ask(question.ask(), line -> question.read(line).isPresent()))
                .orElseThrow();
    }

    /** Whether what comes back is what was sent. */
    @FunctionalInterface
    interface Sameness {
        boolean test(double sent, double back);
    }

    /** Sets a number, and gives what it says of it. */
    double set(NumberLines lines, double number, Sameness same, String unit) throws BridgeException {
        if (!lines.reaches(number)) {
            throw new BadConfiguration(who() + " goes " + lines.range() + " " + unit + " and not to "
                    + lines.plain(number) + ": choose another, or set it by hand without --generator");
        }
        double sent = lines.rounded(number).doubleValue();
        order(lines.line(number));
        if (lines.readBack().isEmpty()) {
            return sent;
        }
        double back = read(lines.readBack().get());
        for (int i = 1; i < TRIES && !same.test(sent, back); i++) {
            order(lines.line(number));
            back = read(lines.readBack().get());
        }
        if (!same.test(sent, back)) {
            throw refusal("does not go to " + lines.plain(number) + " " + unit + " but says " + back);
        }
        return back;
    }

    void set(SwitchLines lines, boolean on) throws BridgeException {
        orderAll(lines.lines(on));
        if (lines.readBack().isEmpty()) {
            return;
        }
        boolean is = read(lines.readBack().get());
        for (int i = 1; i < TRIES && is != on; i++) {
            orderAll(lines.lines(on));
            is = read(lines.readBack().get());
        }
        if (is != on) {
            throw refusal("does not switch its output " + (on ? "on" : "off"));
        }
    }

    /** Where it keeps an error, what it was told just before has failed; that may not matter, and then it is forgotten. */
    void complain(boolean matters, String what) throws BridgeException {
        String error = error();
        if (matters && !error.isEmpty()) {
            throw refusal(what + error);
        }
    }

    private String error() {
        return form.errors()
                .flatMap(question -> heard(question, any -> true))
                .filter(answer -> form.noError().stream().noneMatch(none -> none.fits(answer)))
                .map(answer -> " (" + answer + ")")
                .orElse("");
    }

    BridgeException refusal(String what) {
        return new BadConfiguration(SafeText.line(who() + " " + what + error())
                + ": is --generator-kind right, is it set to remote? Or set it by hand without --generator");
    }

    BridgeException silent() {
        String usual = "is it switched on and set to remote, is the cable right, are --generator-kind and"
                + " --generator-baud its own?";
        return new PortLost(SafeText.line(
                talk.isLinked()
                        ? who() + " does not answer: " + (hint.isEmpty() ? usual : hint)
                        : who() + " has gone: plug it in again with the set OFF and unplugged"));
    }

    String who() {
        return name + " on " + talk.address();
    }
}

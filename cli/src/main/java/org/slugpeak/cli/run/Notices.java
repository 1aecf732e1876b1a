package org.slugpeak.cli.run;

import java.io.PrintStream;
import java.util.Optional;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.DetailWords;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.SessionRecord;

/** Says on standard error, a line each, what went wrong with the link or with single lines of input. */
public final class Notices implements SessionOutput {

    private final PrintStream error;
    private final Saying saying = new Saying();

    /**
     * Notices on a stream.
     *
     * @param error standard error
     */
    public Notices(PrintStream error) {
        this.error = error;
    }

    @Override
    public void take(SessionRecord record) {
        if (record instanceof Link link) {
            link.match(saying).ifPresent(this::say);
        }
    }

    private void say(String words) {
        error.println("slugpeak: " + SafeText.line(words));
    }

    /** What is told of the link; the rest is on the screen or in the lines. */
    private static final class Saying implements Link.Matcher<Optional<String>> {

        private final RecordSentences sentences = new RecordSentences();

        @Override
        public Optional<String> changed(Link.Changed it) {
            String state = CodeWords.of(it.state().code());
            String detail = DetailWords.of(it.detail());
            return Optional.of(
                    detail.isEmpty() ? ScreenPhrase.LINK.of(state) : ScreenPhrase.LINK_DETAIL.of(state, detail));
        }

        @Override
        public Optional<String> broken(Link.Broken it) {
            return Optional.empty();
        }

        @Override
        public Optional<String> notAReading(Link.NotAReading it) {
            return Optional.of(sentences.of(it));
        }

        @Override
        public Optional<String> leftOut(Link.LeftOut it) {
            return Optional.of(sentences.of(it));
        }

        @Override
        public Optional<String> lowBattery(Link.LowBattery it) {
            return Optional.empty();
        }

        @Override
        public Optional<String> unitTold(Link.UnitTold it) {
            return Optional.empty();
        }

        @Override
        public Optional<String> logGap(Link.LogGap it) {
            return Optional.empty();
        }
    }
}

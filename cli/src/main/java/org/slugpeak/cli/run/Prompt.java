package org.slugpeak.cli.run;

import java.io.PrintStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.bridge.source.TypedWord;
import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;

/** Asks a person at a terminal for the next value, when everything about the last one has been said. One thread. */
public final class Prompt implements SessionOutput {

    private final PrintStream out;
    private boolean explained;
    private boolean asked;
    private boolean over;

    /**
     * A prompt that has not been shown yet.
     *
     * @param out standard error, so that standard output may go to a file
     */
    public Prompt(PrintStream out) {
        this.out = out;
    }

    @Override
    public void take(SessionRecord record) {
        asked = false;
        over = record instanceof SessionEnd;
    }

    @Override
    public void flush() {
        if (asked || over) {
            return;
        }
        if (!explained) {
            explained = true;
            out.println(AskPhrase.ONE_VALUE.of(
                    Stream.of(TypedWord.values()).map(Prompt::explain).collect(Collectors.joining(", "))));
        }
        asked = true;
        out.print(AskPhrase.VALUE.of());
        out.flush();
    }

    private static String explain(TypedWord word) {
        return switch (word) {
            case UNDO -> AskPhrase.UNDO.of(word.word());
            case NEXT -> AskPhrase.NEXT.of(word.word());
            case AGAIN -> AskPhrase.AGAIN.of(word.word());
            case SKIP -> AskPhrase.SKIP.of(word.word());
            case QUIT -> AskPhrase.QUIT.of(word.word());
        };
    }
}

package org.slugpeak.cli.run;

import java.io.PrintStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.bridge.source.TypedWord;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;

/** Asks a person at a terminal for the next value, when everything about the last one has been said. One thread. */
public final class Prompt implements SessionOutput {

    private static final String QUESTION = "value> ";

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
            out.println("One settled value for each step of a turn; in place of it "
                    + Stream.of(TypedWord.values()).map(Prompt::explain).collect(Collectors.joining(", ")) + ".");
        }
        asked = true;
        out.print(QUESTION);
        out.flush();
    }

    private static String explain(TypedWord word) {
        return word.word()
                + switch (word) {
                    case UNDO -> " takes the last back";
                    case NEXT -> " begins the next adjuster";
                    case AGAIN -> " the same again";
                    case SKIP -> " leaves it as it is";
                    case QUIT -> " ends";
                };
    }
}

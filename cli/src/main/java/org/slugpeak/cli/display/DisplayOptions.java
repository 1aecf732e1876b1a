package org.slugpeak.cli.display;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.quantity.EnumWord;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.word.Refused;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options of every command that shows a session, to be mixed in. One thread at a time. */
public final class DisplayOptions {

    /** How a session is shown. */
    public enum View {
        /** The large live screen. */
        SCREEN,
        /** Few lines, for a screen reader. */
        PLAIN,
        /** One line a reading. */
        LINES,
        /** Nothing. */
        NONE
    }

    @Option(names = "--view", paramLabel = "screen|plain|lines|none", converter = ViewConverter.class)
    private Optional<View> view = Optional.empty();

    @Option(names = "--plain")
    private boolean plain;

    @Option(names = "--ascii")
    private boolean ascii;

    @Option(names = "--key", paramLabel = "ACTION=KEY", converter = BindingConverter.class)
    private List<KeyBinding> bindings = List.of();

    /** What the command line says nothing about stays as usual. */
    public DisplayOptions() {}

    /**
     * Opens what was asked for, or what suits the place where the program runs.
     *
     * @param out standard output
     * @param err standard error
     * @param carriesJson whether standard output belongs to records for other programs
     * @param useful the actions that the command sees to
     * @return to be closed by the caller
     */
    public Showing open(PrintStream out, PrintStream err, boolean carriesJson, Set<KeyAction> useful) {
        View chosen = chosen(carriesJson);
        return open(chosen, lines(chosen, out), err, carriesJson, useful);
    }

    /**
     * The same for a response curve, whose result alone goes to standard output: what is said meanwhile goes beside it.
     *
     * @param err standard error
     * @param carriesJson whether standard output belongs to records for other programs
     * @param useful the actions that the command sees to
     * @return to be closed by the caller
     */
    public Showing openCurve(PrintStream err, boolean carriesJson, Set<KeyAction> useful) {
        View chosen = chosen(carriesJson);
        return open(chosen, chosen == View.NONE ? record -> {} : new PlainLines(err), err, carriesJson, useful);
    }

    private View chosen(boolean carriesJson) {
        return plain ? View.PLAIN : view.orElseGet(() -> suitable(carriesJson));
    }

    private Showing open(View chosen, RecordSink lines, PrintStream err, boolean carriesJson, Set<KeyAction> useful) {
        if (!carriesJson) {
            Console.trouble().ifPresent(trouble -> err.println("slugpeak: " + trouble));
        }
        KeyBindings keyBindings = bindings();
        Keys keys = new Keys();
        boolean usesTerminal = chosen == View.SCREEN || chosen == View.PLAIN;
        Optional<Console> console = usesTerminal ? Console.open(keyBindings, keys) : Optional.empty();
        if (chosen == View.SCREEN && console.isPresent() && console.get().canDraw()) {
            Screen screen = new Screen(console.get(), keyBindings, useful, ascii);
            return Showing.onScreen(console.get(), screen, keys, err).withKeys(keyBindings.hints(useful));
        }
        if (chosen == View.LINES && Console.isDialogue()) {
            err.println(ScreenPhrase.NO_KEYS.of());
        }
        Showing showing = Showing.inLines(lines, console, keys, err).withKeys(keyBindings.hints(useful));
        return chosen == View.LINES
                ? showing.endingWith(new TerminalLife(Console::isOutputTerminal, Ticker.system()))
                : showing;
    }

    /**
     * Opens lines where values are typed: the keyboard is not free for keys then, and no screen is drawn over the prompt.
     *
     * @param out standard output
     * @param err standard error
     * @param carriesJson whether standard output belongs to records for other programs
     * @return to be closed by the caller
     */
    public Showing openTyped(PrintStream out, PrintStream err, boolean carriesJson) {
        if (view.equals(Optional.of(View.SCREEN))) {
            throw new TypeConversionException("--view screen needs the keyboard that the values are typed at:"
                    + " choose plain or lines, or let the values come through a pipe");
        }
        View chosen = plain ? View.PLAIN : view.orElse(carriesJson ? View.NONE : View.LINES);
        return Showing.inLines(lines(chosen, out), Optional.empty(), new Keys(), err);
    }

    /**
     * Whether the user asked for the lines for a screen reader, which say everything themselves.
     *
     * @return true for {@code --plain} and {@code --view plain}
     */
    public boolean isPlain() {
        return plain || view.equals(Optional.of(View.PLAIN));
    }

    private KeyBindings bindings() {
        try {
            return KeyBindings.usual().with(bindings);
        } catch (Refused twoMeanings) {
            throw new TypeConversionException(twoMeanings.reason());
        }
    }

    private static View suitable(boolean carriesJson) {
        if (carriesJson) {
            return View.NONE;
        }
        return Console.isOutputTerminal() ? View.SCREEN : View.LINES;
    }

    /** A screen that cannot be drawn becomes plain lines. */
    private static RecordSink lines(View chosen, PrintStream out) {
        return switch (chosen) {
            case SCREEN, PLAIN -> new PlainLines(out);
            case LINES -> new PipeLines(out);
            case NONE -> record -> {};
        };
    }

    static final class ViewConverter implements ITypeConverter<View> {
        @Override
        public View convert(String value) {
            return EnumWord.of(View.class, value, "screen, plain, lines, none");
        }
    }

    static final class BindingConverter implements ITypeConverter<KeyBinding> {
        @Override
        public KeyBinding convert(String value) {
            try {
                return KeyBinding.parse(value);
            } catch (Refused wrong) {
                throw new TypeConversionException(wrong.reason());
            }
        }
    }
}

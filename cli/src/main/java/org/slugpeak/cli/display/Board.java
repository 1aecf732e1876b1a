package org.slugpeak.cli.display;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentWords;
import org.slugpeak.cli.moment.ToDo;
import org.slugpeak.cli.words.ScreenPhrase;

/**
 * Writes what the user is asked to do over the middle of the screen, in block letters as large as the room allows: all of it, what stands
 * before its first comma or colon, or else its short form; only where that does not fit either, in plain letters. One thread at a time.
 */
final class Board {

    private static final int LARGEST = 3;

    /** What takes so many rows of plain letters is more than a short form can stand for: where a hand goes, above all. */
    private static final int LONG_ROWS = 3;

    private final Symbols symbols;
    private final BlockLetters letters;

    Board(Symbols symbols, BlockLetters letters) {
        this.symbols = symbols;
        this.letters = letters;
    }

    /**
     * Draws the request of a moment.
     *
     * @param inFullElsewhere whether all of it is written elsewhere, too
     */
    void draw(Grid grid, int top, int rows, Moment moment, boolean flashes, boolean inFullElsewhere) {
        Panel panel = Panel.of(moment.act());
        panel.draw(grid, top, rows, symbols, flashes);
        int left = Panel.edge(grid.width()) + 1;
        Area area = new Area(top, rows, left, panel.style(flashes));
        String text = MomentWords.sentence(moment);
        String sign = String.valueOf(Signs.shape(moment.act()));
        boolean mayBeShort = inFullElsewhere
                || moment.toDo().map(ToDo::maySayLittle).orElse(false)
                || Wrapped.text(text, grid.width() - 2 * left).size() < LONG_ROWS;
        List<String> forms = mayBeShort ? forms(moment, text) : List.of(text);
        boolean drawn =
                Stream.of(sign, "").anyMatch(with -> forms.stream().anyMatch(words -> blocks(grid, area, with, words)));
        if (!drawn) {
            plain(grid, area, text);
        }
    }

    /** What is tried in turn. */
    private static List<String> forms(Moment moment, String text) {
        String word = MomentWords.word(moment);
        boolean brief = moment.toDo().map(ToDo::leadsWithBrief).orElse(false);
        return brief ? List.of(word, text) : List.of(text, text.split("[,;:] ", 2)[0], word);
    }

    /** Where it is written, and how. */
    private record Area(int top, int rows, int left, Grid.Style style) {}

    /** Draws the words as large as they fit without a break in one of them, and says whether they do. */
    private boolean blocks(Grid grid, Area area, String sign, String text) {
        String capitals = text.toUpperCase(Locale.ROOT);
        for (int scale = letters.knows(capitals) ? LARGEST : 0; scale > 0; scale--) {
            for (int signScale = scale; signScale > 0; signScale--) {
                int indent = sign.isEmpty() ? 0 : signScale * (BlockLetters.PITCH + 1);
                List<String> lines = lines(grid, area, scale, indent, capitals);
                if (!lines.isEmpty()) {
                    draw(grid, area, scale, indent, lines);
                    draw(grid, area, signScale, 0, List.of(sign));
                    return true;
                }
            }
        }
        return false;
    }

    /** The lines of a text at a size; none where they do not fit. */
    private List<String> lines(Grid grid, Area area, int scale, int indent, String text) {
        int characters = (grid.width() - 2 * area.left - indent + scale) / (scale * BlockLetters.PITCH);
        List<String> lines = Wrapped.text(text, characters);
        boolean fit = isWhole(text, characters) && lines.size() * BlockLetters.rows(scale, symbols) <= area.rows;
        return fit ? lines : List.of();
    }

    private void draw(Grid grid, Area area, int scale, int indent, List<String> lines) {
        int height = BlockLetters.rows(scale, symbols);
        int pitch = lines.size() * (height + 1) - 1 <= area.rows ? height + 1 : height;
        int first = area.top + Math.max(0, area.rows - lines.size() * pitch) / 2;
        for (int i = 0; i < lines.size(); i++) {
            letters.draw(grid, first + i * pitch, area.left + indent, lines.get(i), scale, symbols, area.style);
        }
    }

    private static boolean isWhole(String text, int characters) {
        return List.of(text.split(" +")).stream().allMatch(word -> word.length() <= characters);
    }

    private static void plain(Grid grid, Area area, String text) {
        List<String> lines = Wrapped.text(text, grid.width() - 2 * area.left);
        int pitch = 2 * lines.size() - 1 <= area.rows ? 2 : 1;
        int first = area.top + Math.max(0, (area.rows - pitch * (lines.size() - 1) - 1) / 2);
        boolean cut = lines.size() > area.rows;
        for (int i = 0; i < Math.min(lines.size(), area.rows); i++) {
            String line = cut && i == area.rows - 1 ? ScreenPhrase.MORE.of() : lines.get(i);
            grid.write(first + i * pitch, area.left, line, area.style);
        }
    }
}

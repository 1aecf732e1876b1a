package org.slugpeak.cli.display;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Moment;

/** The keys at the foot of a page: those that matter now first. All methods are pure. */
final class Foot {

    private static final String GAP = "  ";

    /** What is never left out, however narrow the window. */
    private static final Set<KeyAction> ALWAYS = EnumSet.of(KeyAction.KEYS, KeyAction.QUIT);

    private Foot() {}

    /** The phrases of a moment, most wanted first and the way out last. */
    static List<String> phrases(List<KeyHint> keys, Moment moment) {
        Optional<KeyAction> obvious =
                Obvious.next(moment).filter(next -> keys.stream().anyMatch(hint -> hint.action() == next));
        List<KeyHint> now = new ArrayList<>(keys);
        now.removeIf(hint -> hint.action() == KeyAction.GO && obvious.isEmpty());
        now.sort(Comparator.comparingInt(hint -> rank(hint.action(), moment)));
        return now.stream()
                .map(hint -> hint.action() == KeyAction.GO
                        ? hint.with(obvious.orElse(KeyAction.GO)).phrase()
                        : hint.phrase())
                .toList();
    }

    /** Lower is wanted more; what matters alike stays in the order of the actions. */
    private static int rank(KeyAction action, Moment moment) {
        boolean asked = moment.act() == Act.DO;
        return switch (action) {
            case GO -> 0;
            case DONE, DROP -> asked ? 0 : 4;
            case NEXT -> 1;
            case REPAIRED -> moment.warning().isPresent() ? 1 : 4;
            case TURN_LEFT, TURN_RIGHT -> asked ? 3 : 1;
            case MARK, AGAIN, PREVIOUS, SKIP, PAGE -> 2;
            case REST, LEVEL, CUT, CHECK, COUNTER -> 3;
            case KEYS, QUIT -> 6;
            case SOUND, LOUDER, SOFTER, INTERRUPT, HANG_UP -> 5;
        };
    }

    /** As many rows as the window can spare; what matters least is left out, but never the way out. */
    static List<String> fitting(List<String> phrases, int columns, int height) {
        List<String> left = new ArrayList<>(phrases);
        int kept = (int) phrases.stream().filter(Foot::isAlwaysThere).count();
        List<String> rows = Wrapped.pieces(left, GAP, columns);
        while (rows.size() > Layout.mostKeyRows(height) && left.size() > kept) {
            left.remove(left.size() - 1 - kept);
            rows = Wrapped.pieces(left, GAP, columns);
        }
        return rows;
    }

    private static boolean isAlwaysThere(String phrase) {
        return ALWAYS.stream().anyMatch(action -> phrase.endsWith(" " + action.word()));
    }
}

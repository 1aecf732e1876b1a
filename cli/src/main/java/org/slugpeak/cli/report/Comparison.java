package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.cli.words.ComparePhrase;
import org.slugpeak.cli.words.SheetWords;
import org.slugpeak.core.curve.Estimate;
import org.slugpeak.core.figure.Occasion;

/**
 * What a second session tells beside a first: adjuster by adjuster, dial point by dial point, curve over curve, sheet by sheet. Immutable;
 * any thread may use it.
 *
 * @param then the first session
 * @param now the second session
 * @param figures what could be compared, and what only one of the two has
 * @param left what could not be compared and why, a line each
 */
public record Comparison(SessionStory then, SessionStory now, List<Compared> figures, List<String> left) {

    public Comparison {
        figures = List.copyOf(figures);
        left = List.copyOf(left);
    }

    /**
     * Compares two sessions.
     *
     * @param then the earlier one
     * @param now the later one
     * @return what is to be said of both
     */
    public static Comparison of(SessionStory then, SessionStory now) {
        List<Compared> figures = new ArrayList<>();
        List<String> left = new ArrayList<>();
        if (now.start().startedAt().isBefore(then.start().startedAt())) {
            left.add(ComparePhrase.OTHER_WAY_ROUND.of());
        }
        adjusters(then, now, figures, left);
        dials(then, now, figures);
        curves(then, now, figures, left);
        sheets(then, now, figures, left);
        if (figures.stream().allMatch(each -> each.change().isEmpty())) {
            left.add(ComparePhrase.NOTHING.of());
        }
        return new Comparison(then, now, figures, left);
    }

    /** Whether there are two sessions to compare; the sheets of before and after the work have a table of their own. */
    static boolean isAsked(List<SessionStory> stories) {
        return stories.size() == 2
                && !(isAll(stories.get(0), Occasion.BEFORE) && isAll(stories.get(1), Occasion.AFTER));
    }

    private static boolean isAll(SessionStory story, Occasion occasion) {
        return !story.sheets().isEmpty()
                && story.sheets().stream().allMatch(sheet -> sheet.conditions().occasion() == occasion);
    }

    private static void adjusters(SessionStory then, SessionStory now, List<Compared> figures, List<String> left) {
        if (then.turns().isEmpty() || now.turns().isEmpty()) {
            return;
        }
        if (!then.plan().equals(now.plan())) {
            left.add(ComparePhrase.OTHER_PLAN.of(planned(then), planned(now)));
            return;
        }
        if (then.plan().isEmpty()) {
            left.add(ComparePhrase.BY_NAME.of());
        }
        add(
                figures,
                AdjusterFigures.gains(then),
                AdjusterFigures.gains(now),
                (name, was, is) -> new Compared(Compared.Part.ADJUSTER, name, ComparePhrase.GAIN.of(), "dB", was, is));
        String unit = now.start().measurand().unit();
        if (unit.equals(then.start().measurand().unit())) {
            add(
                    figures,
                    AdjusterFigures.zeros(then),
                    AdjusterFigures.zeros(now),
                    (name, was, is) ->
                            new Compared(Compared.Part.ADJUSTER, name, ComparePhrase.LEFT_AT.of(), unit, was, is));
        }
    }

    private static String planned(SessionStory story) {
        return story.plan().isEmpty() ? ComparePhrase.NO_PLAN.of() : story.plan();
    }

    private static void dials(SessionStory then, SessionStory now, List<Compared> figures) {
        if (then.dials().isEmpty() || now.dials().isEmpty()) {
            return;
        }
        add(
                figures,
                DialFigures.left(then.dials()),
                DialFigures.found(now.dials()),
                (hz, was, is) -> new Compared(
                        Compared.Part.DIAL,
                        Numbers.kHz(hz),
                        ComparePhrase.DIAL_ERROR.of(),
                        "kHz",
                        inKHz(was),
                        inKHz(is)));
    }

    private static void curves(SessionStory then, SessionStory now, List<Compared> figures, List<String> left) {
        if (then.curve().isEmpty() || now.curve().isEmpty()) {
            return;
        }
        if (CurveFigures.hasZero(then) != CurveFigures.hasZero(now)) {
            left.add(ComparePhrase.OTHER_CURVE.of());
            return;
        }
        add(
                figures,
                CurveFigures.of(then),
                CurveFigures.of(now),
                (what, was, is) -> new Compared(Compared.Part.CURVE, "", what, "kHz", inKHz(was), inKHz(is)));
    }

    private static void sheets(SessionStory then, SessionStory now, List<Compared> figures, List<String> left) {
        if (then.sheets().isEmpty() || now.sheets().isEmpty()) {
            return;
        }
        String under = SheetWords.conditions(
                then.sheets().get(then.sheets().size() - 1).conditions());
        String underNow = SheetWords.conditions(now.sheets().get(0).conditions());
        if (!under.equals(underNow)) {
            left.add(ComparePhrase.OTHER_CONDITIONS.of(under, underNow));
            return;
        }
        add(
                figures,
                SheetFigures.left(then),
                SheetFigures.found(now),
                (row, was, is) -> new Compared(
                        Compared.Part.SHEET,
                        Numbers.kHz(row.dialHz()),
                        SheetWords.name(row.kind()),
                        SheetFigures.unit(row.kind()),
                        was,
                        is));
    }

    private static Optional<Estimate> inKHz(Optional<Estimate> hertz) {
        return hertz.map(it -> it.times(1e-3));
    }

    /** Makes a figure of what both say of one thing. */
    private interface Pairing<K> {
        Compared of(K key, Optional<Estimate> then, Optional<Estimate> now);
    }

    private static <K> void add(List<Compared> to, Map<K, Estimate> then, Map<K, Estimate> now, Pairing<K> pairing) {
        Set<K> keys = new LinkedHashSet<>(then.keySet());
        keys.addAll(now.keySet());
        keys.forEach(
                key -> to.add(pairing.of(key, Optional.ofNullable(then.get(key)), Optional.ofNullable(now.get(key)))));
    }
}

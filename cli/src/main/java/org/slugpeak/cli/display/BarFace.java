package org.slugpeak.cli.display;

import org.slugpeak.cli.moment.Level;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.peak.Seek;

/** How the bar of a thing that may be sought lies on its row, and what is written below it. Columns count from 0. */
interface BarFace {

    /** First column of every bar. */
    int LEFT = 1;

    static BarFace of(Seek seek) {
        return switch (seek) {
            case PEAK -> new ExtremeBar(ScreenPhrase.BEST.of());
            case DIP -> new ExtremeBar(ScreenPhrase.LEAST.of());
            case ZERO -> new ZeroBar();
        };
    }

    /** Column of what is sought. */
    int mark(int width);

    /** Column behind the last one of the rail. */
    int railEnd(int mark);

    /** Column where the filling begins. */
    int start(int mark);

    /** Column that the filling reaches, on either side of its start. */
    int end(int mark, Level level);

    /** What is written behind the mark, where there is no row for ticks; may be empty. */
    String label();

    void ticks(Grid grid, int row, int mark);
}

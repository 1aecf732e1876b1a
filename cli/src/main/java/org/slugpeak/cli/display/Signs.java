package org.slugpeak.cli.display;

import org.slugpeak.cli.moment.Act;

/** The large sign of each act: what the hand is to do, never which way the reading goes. Stateless. */
final class Signs {

    private Signs() {}

    /** The name of its shape in {@code letters.txt}. */
    static char shape(Act act) {
        return switch (act) {
            case WAIT -> 'w';
            case TURN -> 't';
            case OTHER_WAY -> 'o';
            case BACK -> 'b';
            case STOP -> 's';
            case HELD -> 'h';
            case TWO_PEAKS -> 'm';
            case NO_PEAK -> '?';
            case HANDS_OFF -> 'p';
            case DO -> 'k';
            case OVERLOAD -> '!';
            case NO_LINK -> 'x';
            case END -> 'e';
        };
    }

    /** The same for a row of plain letters, in characters that every terminal has. */
    static String plain(Act act) {
        return switch (act) {
            case WAIT -> "..";
            case TURN -> ">>";
            case OTHER_WAY -> "><";
            case BACK -> "<<";
            case STOP -> "[]";
            case HELD -> "OK";
            case TWO_PEAKS -> "MM";
            case NO_PEAK -> "??";
            case HANDS_OFF -> "||";
            case DO -> "->";
            case OVERLOAD -> "!!";
            case NO_LINK -> "XX";
            case END -> "==";
        };
    }
}

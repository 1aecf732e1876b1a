package org.slugpeak.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TurnstileTest {

    @Test
    void fewWaitForTheirRefusalTheRestAreCutOffAndLittleIsSaidOfIt() {
        List<String> told = new ArrayList<>();
        List<String> cutOff = new ArrayList<>();
        Turnstile turnstile = new Turnstile(notYet -> {}, told::add);
        for (int i = 0; i < 100; i++) {
            turnstile.turnAway("10.0.0.9", () -> {}, () -> cutOff.add("x"));
        }
        assertEquals(100 - Turnstile.MOST_WAITING, cutOff.size());
        assertEquals(7, told.size(), "said the 1st, 2nd, 4th, 8th, 16th, 32nd and 64th time");
    }
}

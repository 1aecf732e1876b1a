package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.words.InInventedLanguage;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.RecordSink;

/** The screen and the lines speak the language of the user's system. */
@ExtendWith(InInventedLanguage.class)
class OtherLanguageOnScreenTest {

    private static void play(RecordSink sink) {
        sink.take(Sessions.start(Seek.PEAK));
        sink.take(new Adjuster(0, "T2 bottom", Adjuster.Action.BEGIN, 0.5, Double.NaN, Double.NaN));
        sink.take(new Passed(Sessions.seconds(1), 1.0, 0, 0.6));
    }

    @Test
    void theScreenSpeaksIt() {
        MomentKeeper keeper = new MomentKeeper();
        play(keeper);
        String screen = String.join(
                "\n",
                new Page(Symbols.ASCII, List.of())
                        .draw(keeper.moment(), Aside.NONE, 80, 24)
                        .lines());
        assertTrue(screen.contains("jasa: kapo, "), screen);
        assertEquals("KAPO", Act.BACK.word());
        keeper.take(new Adjuster(Sessions.seconds(2), "T2 top", Adjuster.Action.BEGIN, 0.5, Double.NaN, Double.NaN));
        assertEquals("turnu lante, mi vola kulmo", keeper.moment().verdict().sentence());
    }

    @Test
    void theLinesSpeakIt() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        play(new PlainLines(new PrintStream(out, true, StandardCharsets.UTF_8)));
        assertEquals(
                List.of("dc voltage de sim", "nu: T2 bottom", "jasa: kapo, 0.6 dB"),
                out.toString(StandardCharsets.UTF_8).lines().toList());
    }
}

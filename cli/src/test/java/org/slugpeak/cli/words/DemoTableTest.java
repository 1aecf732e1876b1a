package org.slugpeak.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.sim.DemoOutcome;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.receiver.IfPerformance;
import org.slugpeak.core.session.Caution;

class DemoTableTest {

    private static final IfPerformance BEFORE = new IfPerformance(440e-6, 450.2e3, 446.4e3, 464.6e3);
    private static final IfPerformance AFTER = new IfPerformance(57e-6, 454.1e3, 450.1e3, 458.8e3);
    private static final Caution.Suspected HUM = new Caution.Suspected(65_400_000_000L, Suspicion.HUM, 0.1);
    private static final Caution.Suspected MICA = new Caution.Suspected(5_000_000_000L, Suspicion.MICA, Double.NaN);

    private static List<String> table(Caution.Suspected... said) {
        return DemoTable.lines(new DemoOutcome(
                List.of(new DemoOutcome.Step("T2 top", 7.84, 0.02)),
                BEFORE,
                AFTER,
                0.03,
                Optional.of(Fault.HUM),
                List.of(said)));
    }

    @Test
    void showsEachAdjusterAndWhatIsLeft() {
        assertTrue(table().contains("T2 top                         +7.84 dB        0.02 dB"), table().toString());
        assertTrue(table().contains("left on the table: 0.03 dB"));
    }

    @Test
    void saysWhatWasSeededAndWhatTheToolSaidAndWhen() {
        List<String> table = table(MICA, HUM);
        assertTrue(table.contains("seeded: hum; slugpeak said at 1:05:"), table.toString());
        assertTrue(table.contains("slugpeak also said, wrongly, at 0:05:"), table.toString());
        String all = String.join(" ", table).replaceAll(" +", " ");
        assertTrue(all.contains("'" + new RecordSentences().of(HUM) + "'"), all);
        assertTrue(table.stream().allMatch(line -> line.length() <= 72), table.toString());
    }

    @Test
    void ownsUpToAFaultThatWasMissed() {
        assertEquals(
                1,
                table().stream()
                        .filter("seeded: hum; slugpeak missed it."::equals)
                        .count());
    }
}

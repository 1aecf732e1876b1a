package org.slugpeak.bridge.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.testkit.ManualTicker;
import org.slugpeak.bridge.testkit.ScriptedCarrier;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.GeneratorSetting;
import org.slugpeak.core.generator.LevelUnit;
import org.slugpeak.core.generator.Modulation;

/** The invented synthesiser board of the template, spoken to as its description says. */
class DescribedBoardTest {

    private static final long SOON_NANOS = 1_000_000;
    private static final GeneratorSetting WANTED =
            new GeneratorSetting(455e3, LevelUnit.DBM.toEmfVolts(-35.04), Modulation.NONE, true);

    private final ManualTicker ticker = new ManualTicker(0);
    private final Map<String, String> registers = new HashMap<>(Map.of("F", "0000000", "A", "0.0", "R", "0"));
    private final Deque<Integer> drops = new ArrayDeque<>();
    private final ScriptedCarrier line = new ScriptedCarrier(ticker).answeredBy(this::board);
    private Map<String, String> otherwise = Map.of();
    private int asked;

    private void board(ScriptedCarrier carrier, String sent) {
        String order = sent.strip();
        if (order.matches("[FAR]\\?")) {
            String register = order.substring(0, 1);
            String end = register.equals("A") ? "dBm" : "";
            say(carrier, register + "=" + registers.get(register).replaceFirst("^0+(?=\\d)", "") + end);
        } else if (order.equals("ID?")) {
            say(carrier, "DS-2");
        } else {
            registers.put(order.substring(0, 1), otherwise.getOrDefault(order, order.substring(1)));
            say(carrier, order.startsWith("X") ? "ERR 3" : "OK");
        }
    }

    private void say(ScriptedCarrier carrier, String text) {
        boolean dropped = drops.contains(asked++);
        if (!dropped) {
            carrier.text(SOON_NANOS, text + "\r\n");
        }
    }

    private DescribedGenerator board() throws BridgeException {
        DescribedGenerator generator = new DescribedGenerator(Generators.find("template"), line, ticker);
        generator.greet();
        return generator;
    }

    @Test
    void obeysInItsOwnWords() throws BridgeException {
        DescribedGenerator generator = board();
        GeneratorSetting real = generator.set(WANTED);
        assertEquals(
                List.of("E0\r", "ID?\r", "F0455000\r", "F?\r", "M0\r", "A-35\r", "A?\r", "R1\r", "R?\r"), line.sent());
        assertEquals(-35.0, LevelUnit.DBM.ofEmfVolts(real.emfVolts()), 1e-9);
        assertEquals(Optional.empty(), generator.leave());
        assertEquals("0", registers.get("R"));
        assertTrue(line.isClosed());
        assertEquals("E1\r", line.sent().get(line.sent().size() - 1));
    }

    @Test
    void setsOnlyWhatDiffers() throws BridgeException {
        DescribedGenerator generator = board();
        GeneratorSetting real = generator.set(WANTED);
        int before = line.sent().size();
        generator.set(real.withFrequency(456e3));
        assertEquals(
                List.of("F0456000\r", "F?\r"),
                line.sent().subList(before, line.sent().size()));
    }

    @Test
    void whatIsToBeOffIsOffBeforeAnythingElseChanges() throws BridgeException {
        DescribedGenerator generator = board();
        generator.set(WANTED);
        int before = line.sent().size();
        generator.set(WANTED.switched(false).withFrequency(460e3));
        assertEquals("R0\r", line.sent().get(before));
    }

    @Test
    void eachAnswerMayBeDroppedOnceAndAllIsSetAllTheSame() throws BridgeException {
        for (int dropped = 0; dropped < 8; dropped++) {
            drops.clear();
            drops.add(dropped);
            asked = 0;
            DescribedGenerator generator = board();
            GeneratorSetting real = generator.set(WANTED);
            assertEquals(455e3, real.frequencyHz(), "answer " + dropped + " dropped");
            assertEquals("1", registers.get("R"));
        }
    }

    @Test
    void whatItMakesOfTheNumberIsSaidWhereItIsAnother() throws BridgeException {
        otherwise = Map.of("F0455000", "0460000");
        DescribedGenerator generator = board();
        String message =
                assertThrows(BridgeException.class, () -> generator.set(WANTED)).getMessage();
        assertTrue(message.contains("does not go to 455000 Hz but says 460000"), message);
    }

    @Test
    void aSwitchThatDoesNotSwitchIsSaid() throws BridgeException {
        otherwise = Map.of("R1", "0");
        DescribedGenerator generator = board();
        String message =
                assertThrows(BridgeException.class, () -> generator.set(WANTED)).getMessage();
        assertTrue(message.contains("does not switch its output on"), message);
    }

    @Test
    void beyondItsReachNothingIsSent() throws BridgeException {
        DescribedGenerator generator = board();
        int before = line.sent().size();
        String message = assertThrows(BridgeException.class, () -> generator.set(WANTED.withFrequency(98e6)))
                .getMessage();
        assertTrue(message.contains("goes from 10000 to 40000000 Hz and not to 98000000"), message);
        assertEquals(before, line.sent().size());
    }

    @Test
    void tellsHowFarItReaches() throws BridgeException {
        GeneratorReach reach = board().reach();
        assertEquals(LevelUnit.DBM.toEmfVolts(-70), reach.lowestEmfVolts(), 1e-12);
        assertEquals(LevelUnit.DBM.toEmfVolts(3), reach.highestEmfVolts(), 1e-12);
    }
}

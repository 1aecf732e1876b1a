package org.slugpeak.bridge.source;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.testkit.ReferenceTable;
import org.slugpeak.core.reading.Condition;

class MeterFieldTest {

    static Stream<List<String>> answers() {
        return ReferenceTable.rows("meter-answers.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("answers")
    void meansWhatTheStandardsAndThePracticeSay(List<String> row) {
        Optional<MeterField> field = MeterField.parse(row.get(0));
        switch (row.get(1)) {
            case "none" -> assertEquals(Optional.empty(), field);
            case "over-range", "no-value" ->
                assertEquals(row.get(1), field.orElseThrow().condition().code());
            default -> {
                assertEquals(Condition.OK, field.orElseThrow().condition());
                assertEquals(Double.parseDouble(row.get(1)), field.orElseThrow().value());
            }
        }
    }

    @Test
    void notANumberIsNeverAnOverload() {
        assertEquals(
                Condition.OVER_RANGE, MeterField.parse("9.90E37").orElseThrow().condition());
        assertEquals(
                Condition.NO_VALUE, MeterField.parse("9.91E37").orElseThrow().condition());
    }

    @Test
    void anyDoubleWrittenAsNr3ReadsBackAsItself() {
        SplittableRandom random = new SplittableRandom(4882);
        for (int i = 0; i < 10_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-12, 28));
            String written = String.format(Locale.ROOT, "%+.16E", value);
            assertEquals(value, MeterField.parse(written).orElseThrow().value(), written);
        }
    }

    @Test
    void lastDigitTellsTheResolutionAndTrailingZerosTheFixedFormat() {
        MeterField field = MeterField.parse("1.250 mV").orElseThrow();
        assertAll(
                () -> assertEquals(1e-6, field.resolution().orElseThrow()),
                () -> assertTrue(field.padded()),
                () -> assertEquals("V", field.unit()),
                () -> assertFalse(MeterField.parse("1.0").orElseThrow().padded()),
                () -> assertTrue(
                        MeterField.parse("1.25E+00").orElseThrow().resolution().isEmpty()));
    }

    @Test
    void anyTextIsEitherAFieldOrNone() {
        SplittableRandom random = new SplittableRandom(20);
        String alphabet = "0123456789+-.eE OLVmAN,;\"\t\u00b5";
        for (int i = 0; i < 50_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(12); length > 0; length--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            MeterField.parse(text.toString())
                    .ifPresent(field -> assertTrue(Double.isFinite(field.value()), text::toString));
        }
    }
}

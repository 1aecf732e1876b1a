package org.slugpeak.bridge.decimal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTest {

    private static final int RUNS = 60_000;

    private final SplittableRandom random = new SplittableRandom(754);

    /** The reference is the Java class library, whose conversion is correctly rounded (IEEE 754-2019, section 5.12). */
    @Test
    void everyDecimalIsTheDoubleThatTheClassLibraryReads() {
        for (int i = 0; i < RUNS; i++) {
            assertSameDouble(anyDecimal());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "-0",
                "+0.0",
                "5.",
                ".5",
                "-.5e1",
                "1E5",
                "1e+05",
                "1e-0",
                // hardest cases for 53 bits: just beside the middle between two doubles, and at the edges of the range
                "9007199254740993",
                "9007199254740992.999",
                "4503599627370497.5",
                "1e22",
                "1e23",
                "8.5e22",
                "123456789012345e22",
                "2.2250738585072011e-308",
                "2.2250738585072012e-308",
                "2.2250738585072014e-308",
                "4.9e-324",
                "2.4703282292062327e-324",
                "2.4703282292062328e-324",
                "1e-400",
                "0e999999999999",
                "0.0e-999999999999",
                "1e-99999999999999999999",
                "1.7976931348623157e308",
                "1.7976931348623158e308",
                "1.7976931348623159e308",
                "1e309",
                "-1e999999999999",
                "9223372036854775807",
                "9223372036854775808",
                "18446744073709551616",
                "0.000000000000000000000000000001",
                "100000000000000000000000000000000000000000",
                "3.1415926535897932384626433832795028841971693993751",
            })
    void awkwardDecimalsToo(String text) {
        assertSameDouble(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "-",
                "+",
                ".",
                "e5",
                "1e",
                "1e+",
                "1.2.3",
                "1,5",
                "--1",
                "+-1",
                "1 ",
                " 1",
                "0x10",
                "1d",
                "1f",
                "NaN",
                "Infinity",
                "-inf",
                "1_000",
                "1e5.0",
                "1e5e5",
                "\u0661",
                "1\0",
                "12V"
            })
    void nothingElseIsANumber(String text) {
        Decimal decimal = new Decimal('.');
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        assertFalse(decimal.read(bytes, 0, bytes.length));
    }

    @Test
    void readsDecimalCommasOnlyIfTold() {
        byte[] bytes = "x-1,25e2;".getBytes(StandardCharsets.UTF_8);
        Decimal decimal = new Decimal(',');
        assertTrue(decimal.read(bytes, 1, bytes.length - 1));
        assertEquals(-125.0, decimal.toDouble());
        bytes = "3,14159265358979323846264338".getBytes(StandardCharsets.UTF_8);
        assertTrue(decimal.read(bytes, 0, bytes.length));
        assertEquals(Math.PI, decimal.toDouble());
    }

    /** The reference is exact decimal arithmetic. */
    @Test
    void everyTimeOfUpToEighteenDigitsIsRoundedOnce() {
        for (int i = 0; i < RUNS; i++) {
            String text = anyTime();
            Decimal decimal = read(text);
            for (int unit : new int[] {0, 3, 6, 9}) {
                BigDecimal exact = new BigDecimal(text).scaleByPowerOfTen(unit).setScale(0, RoundingMode.HALF_UP);
                boolean fits = exact.abs().compareTo(BigDecimal.valueOf(Long.MAX_VALUE)) <= 0;
                long expected = fits ? exact.longValueExact() : Decimal.OUT_OF_RANGE;
                assertEquals(expected, decimal.toNanos(unit), text + " with unit 1e-" + (9 - unit) + " s");
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.02, 20000000",
        "1e-9, 1",
        "0.0000000005, 1",
        "0.00000000049999999999, 0",
        "-1.5, -1500000000",
        "1764056000.123456789, 1764056000123456789",
        "9223372036.854775807, 9223372036854775807",
        "-9223372036.854775807, -9223372036854775807",
        "9300000000, -9223372036854775808",
        "1e300, -9223372036854775808",
        "0e300, 0",
        "1e-300, 0",
        "0.100000000000000005551115123125782702, 100000000",
    })
    void secondsBecomeNanoseconds(String text, long nanos) {
        assertEquals(nanos, read(text).toNanos(Decimal.SECONDS));
    }

    @Test
    void tellsWholeNumbers() {
        assertTrue(read("-12").isWhole());
        assertFalse(read("12.").isWhole());
        assertFalse(read("1e1").isWhole());
    }

    private void assertSameDouble(String text) {
        double expected = Double.parseDouble(text);
        assertEquals(
                Double.doubleToRawLongBits(expected),
                Double.doubleToRawLongBits(read(text).toDouble()),
                text);
    }

    private static Decimal read(String text) {
        byte[] bytes = ("," + text + ",").getBytes(StandardCharsets.UTF_8);
        Decimal decimal = new Decimal('.');
        assertTrue(decimal.read(bytes, 1, bytes.length - 1), text);
        return decimal;
    }

    private String anyDecimal() {
        double any = Double.longBitsToDouble(random.nextLong());
        double sensible = random.nextDouble(-100, 100);
        return switch (random.nextInt(7)) {
            case 0 -> Double.isFinite(any) ? Double.toString(any) : "1";
            case 1 -> String.format(Locale.ROOT, "%." + random.nextInt(20) + "f", sensible);
            case 2 -> String.format(Locale.ROOT, "%." + random.nextInt(20) + "e", sensible);
            case 3 -> Double.isFinite(any) ? new BigDecimal(any).toString() : "-1";
            case 4 -> digits(1 + random.nextInt(40)) + "." + digits(random.nextInt(40));
            case 5 -> digits(1 + random.nextInt(20)) + "e" + random.nextInt(-400, 400);
            default -> middle(Math.abs(sensible));
        };
    }

    /** Exactly in the middle between two doubles, or a last digit beside it. */
    private String middle(double value) {
        String exact = new BigDecimal(value)
                .add(new BigDecimal(Math.nextUp(value)))
                .divide(BigDecimal.valueOf(2))
                .toPlainString();
        return exact + (exact.contains(".") ? digits(random.nextInt(3)) : "");
    }

    private String anyTime() {
        String all = digits(1 + random.nextInt(18));
        int point = random.nextInt(all.length() + 1);
        String sign = random.nextInt(4) == 0 ? "-" : "";
        String exponent = random.nextInt(4) == 0 ? "e" + random.nextInt(-25, 12) : "";
        return sign + all.substring(0, point) + "." + all.substring(point) + exponent;
    }

    private String digits(int count) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < count; i++) {
            out.append((char) ('0' + random.nextInt(10)));
        }
        return out.toString();
    }
}

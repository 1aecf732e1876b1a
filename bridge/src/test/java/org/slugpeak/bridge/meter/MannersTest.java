package org.slugpeak.bridge.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.InstrumentSource;
import org.slugpeak.bridge.testkit.ManualTicker;
import org.slugpeak.bridge.testkit.ScriptedCarrier;
import org.slugpeak.bridge.testkit.Transcript;

/**
 * The manners of bench meters, one a row, found without being named, on a clock that is moved by waiting. Each is a documented
 * habit of some meter (vendors' manuals, and the collection of habits in shared/reference/meters of the project's research), played
 * by an invented one. In the answers ^0 is NUL, ^Q XON, ^[ ESC, \\n a line end.
 */
class MannersTest {

    private static final long SECOND = TimeUnit.SECONDS.toNanos(1);
    private static final String NAME = "EMBER FELL,BM-450,0,1";

    private final ManualTicker ticker = new ManualTicker(0);
    private final ScriptedCarrier carrier = new ScriptedCarrier(ticker);
    private final Transcript heard = new Transcript();
    private String received = "";
    private long freeNanos;

    @Timeout(20)
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            plain                     | NAME          | +1.25000000E+00        | 0    | any  | 1.25
            no exponent               | NAME          | 1.25                   | 0    | any  | 1.25
            line ends with LF alone   | NAME\\n       | 1.25\\n                | 0    | any  | 1.25
            line ends with LF CR      | NAME\\n\\r    | 1.25\\n\\r             | 0    | any  | 1.25
            2.5 s an answer           | NAME          | 1.25                   | 2500 | any  | 1.25
            CR LF is needed           | NAME          | 1.25                   | 0    | crlf | 1.25
            no *IDN?                  | -             | 1.25                   | 0    | any  | 1.25
            no *IDN? and CR LF needed | -             | 1.25                   | 0    | crlf | 1.25
            prompt                    | > NAME        | > 1.25                 | 0    | any  | 1.25
            SCPI prompt               | SCPI> NAME    | SCPI> 1.25             | 0    | any  | 1.25
            numbered prompt           | 1> NAME       | 3> 1.25                | 0    | any  | 1.25
            prompt line behind        | NAME\\n=>     | 1.25\\n=>              | 0    | any  | 1.25
            echo                      | ECHO\\nNAME   | ECHO\\n1.25            | 0    | any  | 1.25
            VDC before                | NAME          | VDC +1.25              | 0    | any  | 1.25
            header before             | NAME          | :MEAS:VOLT:DC +1.25    | 0    | any  | 1.25
            key word and function     | NAME          | 2 DCV -3.2100 mV       | 0    | any  | -0.00321
            VDC behind                | NAME          | +1.25E+0 VDC           | 0    | any  | 1.25
            VDC behind a comma        | NAME          | +1.25E+0,VDC           | 0    | any  | 1.25
            unit glued on             | NAME          | 1.25V                  | 0    | any  | 1.25
            double quotes             | "EMBER FELL,BM-450,0,1" | "+1.25"       | 0    | any  | 1.25
            single quotes             | NAME          | '+1.25'                | 0    | any  | 1.25
            definite block            | NAME          | #15+1.25               | 0    | any  | 1.25
            block with zeros          | NAME          | #3005+1.25             | 0    | any  | 1.25
            indefinite block          | NAME          | #0+1.25                | 0    | any  | 1.25
            NUL first                 | ^0^0NAME      | ^0^01.25               | 0    | any  | 1.25
            XON first                 | ^QNAME        | ^Q1.25                 | 0    | any  | 1.25
            ESC in the identity       | ^[[1mEMBER FELL^[[0m,BM-450,0,1 | 1.25 | 0    | any  | 1.25
            identity of 5000          | LONG,BM-450   | 1.25                   | 0    | any  | 1.25
            identity of three fields  | EMBER FELL,BM-450,1 | 1.25             | 0    | any  | 1.25
            several readings          | NAME          | 1.25,2.50,3.75         | 0    | any  | 1.25
            channel and status behind | NAME          | +1.25E+0,+0,INT        | 0    | any  | 1.25
            overload                  | NAME          | +9.9E37                | 0    | any  | over-range
            overload of the eighties  | NAME          | +9.99999E+35           | 0    | any  | over-range
            """)
    void areRead(String manner, String identity, String answer, int delayMillis, String end, String expected)
            throws BridgeException {
        InstrumentSource source = source(MeterSetting.DEFAULT);
        play(identity, answer, delayMillis, end);
        assertTrue(source.settle(25 * SECOND), () -> manner + ": " + source.trouble());
        for (int i = 0; i < 100 && heard.readings().isEmpty(); i++) {
            source.poll(SECOND, heard);
        }
        assertEquals(expected, heard.lines().stream().findFirst().orElse(heard.details() + " " + carrier.sent()));
        long mostNanos = delayMillis > 0 ? 20 * SECOND : 6 * SECOND;
        assertTrue(ticker.nowNanos() < mostNanos, manner + " took " + ticker.nowNanos() / 1e9 + " s");
    }

    @Timeout(20)
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            decimal comma      | 1,0342            | EMBER FELL BM-450, firmware 1 answers READ? with '1,0342' may be 1.0342 or the two numbers 1 and 0342: use --decimal-comma if the comma is the decimal point, or numbers = "all" in a description if it is not
            ohms in words      | RES +1.25E+3      | the meter reads 'RES', not volts: turn its switch to volts
            ohms behind        | 1.25E+3,OHM       | the meter reads 'OHM', not volts: turn its switch to volts
            amperes behind     | 1.25E-3 ADC       | the meter reads 'ADC', not volts: turn its switch to volts
            AC in words        | VAC +1.25         | the meter reads AC volts, not DC: turn it to DC, or start again with --ac
            words only         | READY WHEN YOU ARE | EMBER FELL BM-450, firmware 1 answers 'READY WHEN YOU ARE', which has no number of volts: describe it (--meter FILE.toml, see template.toml)
            """)
    void areToldInWordsAndNeverGuessed(String manner, String answer, String words) throws BridgeException {
        InstrumentSource source = source(MeterSetting.DEFAULT);
        play("NAME", answer, 0, "any");
        String said = "";
        try {
            source.settle(25 * SECOND);
            for (int i = 0; i < 20 && audition.isFound() && heard.details().isEmpty(); i++) {
                source.poll(SECOND, heard);
            }
            said = heard.details().stream()
                    .findFirst()
                    .or(source::trouble)
                    .orElse(audition.problem().orElse(""));
        } catch (BridgeException refused) {
            said = refused.getMessage().replace("scripted port: ", "");
        }
        assertEquals(words, said);
        assertFalse(
                heard.readings().stream()
                        .anyMatch(reading -> reading.condition().hasValue()),
                manner);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1,0342 | 1.0342
            -0,5   | -0.5
            1,5E-3 | 0.0015
            """)
    void decimalCommasAreReadWhereTheyAreTold(String answer, double expected) throws BridgeException {
        InstrumentSource source = source(new MeterSetting(MeterSetting.Function.DC, OptionalDouble.empty(), true));
        play("NAME", answer, 0, "any");
        assertTrue(source.settle(25 * SECOND));
        source.poll(SECOND, heard);
        assertEquals(expected, heard.readings().get(0).value());
    }

    private Audition audition;

    private InstrumentSource source(MeterSetting setting) throws BridgeException {
        Instruments instruments = Instruments.create();
        Decoder asker = instruments.find("generic-scpi").decoders().create(setting);
        audition = new Audition(
                List.of(instruments.find("generic-line").decoders().create(MeterSetting.DEFAULT)),
                HeardFamilies.of(List.of(), MeterSetting.DEFAULT),
                asker,
                Audition.FIRST_SILENCE_NANOS);
        return new InstrumentSource(carrier, audition, ticker);
    }

    private void play(String identity, String answer, int delayMillis, String end) {
        carrier.answeredBy((line, bytes) -> {
            received += bytes;
            boolean whole = end.equals("crlf") ? received.endsWith("\r\n") : received.endsWith("\n");
            if (!whole) {
                return;
            }
            String question = received.substring(Math.max(0, received.strip().lastIndexOf('\n')))
                    .strip();
            received = "";
            String reply = question.startsWith("*IDN") ? identity : question.startsWith("READ") ? answer : "";
            if (question.startsWith("SYSTem:ERR")) {
                reply = "0,\"No error\"";
            }
            if (!reply.isEmpty() && !reply.equals("-")) {
                freeNanos = Math.max(freeNanos, ticker.nowNanos()) + TimeUnit.MILLISECONDS.toNanos(5 + delayMillis);
                line.text(freeNanos - ticker.nowNanos(), written(reply, question) + "\r\n");
            }
        });
    }

    private static String written(String text, String question) {
        return text.replace("NAME", NAME)
                .replace("LONG", "E".repeat(5_000))
                .replace("ECHO", question)
                .replace("\\n", "\n")
                .replace("\\r", "\r")
                .replace("^0", "\0")
                .replace("^Q", "\u0011")
                .replace("^[", "\u001b");
    }
}

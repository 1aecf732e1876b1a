package org.slugpeak.bridge.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.instrument.DecoderFactory;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.testkit.DecoderDrive;
import org.slugpeak.bridge.testkit.Transcript;
import org.slugpeak.bridge.testkit.WorkedFrame;

/** The shipped descriptions against every {@link WorkedFrame}. */
class MeterFramesTest {

    private static final MeterSetting AC = new MeterSetting(MeterSetting.Function.AC, OptionalDouble.empty());
    private static final double SHARE = 1e-12;
    private static final Map<String, DecoderFactory> FACTORIES = new ConcurrentHashMap<>();

    static List<WorkedFrame> rows() throws IOException {
        return WorkedFrame.all();
    }

    @Test
    void areAllThere() throws IOException {
        assertEquals(282, rows().size());
        assertEquals(
                52,
                rows().stream().filter(row -> row.meaning().equals("refuse")).count());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void meanWhatTheTableSays(WorkedFrame row) throws BadConfiguration {
        MeterFrame frame = new FrameReader(decoder(row, MeterSetting.DEFAULT).format()).read(row.bytes());
        assertEquals(row.meaning().matches("[-0-9.]+") ? "volts" : row.meaning(), kind(frame), frame.toString());
        if (frame instanceof MeterFrame.Volts volts) {
            double expected = Double.parseDouble(row.meaning());
            assertEquals(expected, volts.volts(), SHARE * Math.max(1, Math.abs(expected)));
            assertEquals(row.mayBeUsed(), volts.doubt().isEmpty(), volts.doubt());
            assertEquals(row.note().contains("low battery"), volts.lowBattery());
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void giveAReadingOnlyWhereItMayBeUsed(WorkedFrame row) throws BadConfiguration {
        List<Transcript> both = List.of(said(row, MeterSetting.DEFAULT), said(row, AC));
        long values = both.stream()
                .filter(said -> said.readings().stream()
                        .anyMatch(each -> each.condition().hasValue()))
                .count();
        boolean usable = row.meaning().matches("[-0-9.]+") && row.mayBeUsed();
        assertEquals(usable ? 1 : 0, values, "either as DC or as AC, never as both");
        if (row.meaning().equals("refuse")) {
            both.forEach(said -> assertEquals(List.of(), said.readings()));
        }
    }

    @Test
    void aStartInTheMiddleCostsOneFrame() throws Exception {
        WorkedFrame first = rows().get(0);
        byte[] stream = join(List.of(first, first, first));
        for (int from = 1; from < first.bytes().length; from++) {
            byte[] late = java.util.Arrays.copyOfRange(stream, from, stream.length);
            assertEquals(
                    List.of("1.234", "1.234"), feed("fs9721", List.of(late)).lines());
        }
    }

    @Test
    void twoCopiesAreOneReading() throws Exception {
        WorkedFrame row = rows().stream()
                .filter(it -> it.family().equals("es519xx-11-2400"))
                .skip(2)
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of("1.234"),
                feed("es519xx-11-2400", List.of(row.bytes(), row.bytes())).lines());
        assertEquals(
                List.of("1.234", "1.234"),
                feed("es519xx-11-2400", List.of(row.bytes(), row.bytes(), row.bytes()))
                        .lines());
    }

    private static Transcript said(WorkedFrame row, MeterSetting setting) throws BadConfiguration {
        return DecoderDrive.feed(decoder(row, setting), List.of(row.bytes()));
    }

    private static Transcript feed(String family, List<byte[]> pieces) throws BadConfiguration {
        return DecoderDrive.feed(factory(family).create(MeterSetting.DEFAULT), pieces);
    }

    private static DecoderFactory factory(String family) throws BadConfiguration {
        DecoderFactory found = FACTORIES.get(family);
        if (found == null) {
            found = Instruments.create().find(family).decoders();
            FACTORIES.put(family, found);
        }
        return found;
    }

    private static FrameDecoder decoder(WorkedFrame row, MeterSetting setting) throws BadConfiguration {
        return (FrameDecoder) factory(row.description()).create(setting);
    }

    private static byte[] join(List<WorkedFrame> rows) {
        java.io.ByteArrayOutputStream all = new java.io.ByteArrayOutputStream();
        rows.forEach(row -> all.writeBytes(row.bytes()));
        return all.toByteArray();
    }

    private static String kind(MeterFrame frame) {
        return frame.match(new MeterFrame.Matcher<>() {
            @Override
            public String volts(MeterFrame.Volts it) {
                return "volts";
            }

            @Override
            public String beyond(MeterFrame.Beyond it) {
                return "OL";
            }

            @Override
            public String other(MeterFrame.Other it) {
                assertFalse(it.words().isEmpty());
                return "not-volts";
            }

            @Override
            public String refused(MeterFrame.Refused it) {
                return "refuse";
            }
        });
    }
}

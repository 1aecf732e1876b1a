package org.slugpeak.cli.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.bridge.source.SourceAddress;

/** Which way in an address names, by the conventions of each system; none of them is there. */
class WayInTest {

    @ParameterizedTest
    @CsvSource({
        "C:\\logs\\evening.jsonl, LOG",
        "c:/logs/Evening.JSONL, LOG",
        "\\\\server\\share\\take.wav, AUDIO",
        "s:\\sim\\slug.CSV, TEXT",
        "..\\sound\\level.txt, TEXT",
        "/Volumes/USB STICK/slug.csv, TEXT",
        "COM3, INSTRUMENT",
        "\\\\.\\COM12, INSTRUMENT",
        "/dev/cu.usbserial-0001, INSTRUMENT",
        "tcp:192.168.1.20:5025, INSTRUMENT",
        "sound:Line (USB Audio), AUDIO",
        "sim:plan, SIMULATED"
    })
    void anAddressIsKnownByItsForm(String address, WayIn.Trait trait) {
        WayIn way = WayIn.of(new SourceAddress(address));
        assertTrue(way.has(trait), way.traits().toString());
        boolean isFile = address.toLowerCase(Locale.ROOT).matches(".*\\.(jsonl|wav|csv|txt)");
        assertEquals(isFile, way.has(WayIn.Trait.RECORDED));
    }
}

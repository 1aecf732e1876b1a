package org.slugpeak.bridge.instrument;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.slugpeak.bridge.testkit.WorkedFrame;

/**
 * What an instrument that comes with the tool may say on its line.
 *
 * @param instrument its name
 * @param bytes good ones and bad ones
 */
@SuppressWarnings("ArrayRecordComponent") // looked at, never compared
record Talk(String instrument, byte[] bytes) {

    private static final Map<String, String> WRITTEN = Map.of(
            "generic-line", "9\n1.25 V\r\n-0.5 V\nOL\n\nbad\n2.0 V\n",
            "value-and-time", "20,1\n# hello\n40,1.5\n60,1.75\n80\n100,x\n120,OL\n",
            "template", "17*00\nA,1000,512*58\nA,2000,1023*6F\nA,3000,511*00\n",
            "slugpeak-adc", """
                    60 5*1234
                    S slugpeak-line 1 name=bench-meter unit=mV scale=0.5 low=0 high=4095 why=boot*B05F
                    D 1.5 820 -*EE24
                    D 1.5 821 -*EE24
                    """,
            "generic-scpi",
                    "EMBER FELL,BM-450,0,1.07\r\n0,\"No error\"\r\n0,\"No error\"\r\n0,\"No error\"\r\n+1.25E+00\r\n-2.5\n9.9E37\n");

    /** One for each instrument that comes with the tool; who adds an instrument adds what it says. */
    static List<Talk> all() throws IOException {
        List<WorkedFrame> frames = WorkedFrame.all();
        List<Talk> talks = new ArrayList<>();
        for (String name : Instruments.SHIPPED) {
            byte[] bytes = WRITTEN.containsKey(name) ? WRITTEN.get(name).getBytes(ISO_8859_1) : framesOf(name, frames);
            assertTrue(bytes.length > 0, name + " has neither worked frames nor a written talk");
            talks.add(new Talk(name, bytes));
        }
        return talks;
    }

    private static byte[] framesOf(String family, List<WorkedFrame> frames) {
        ByteArrayOutputStream joined = new ByteArrayOutputStream();
        frames.stream()
                .filter(frame -> frame.family().equals(family))
                .forEach(frame -> joined.writeBytes(frame.bytes()));
        return joined.toByteArray();
    }

    @Override
    public String toString() {
        return instrument;
    }
}

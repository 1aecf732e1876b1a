package org.slugpeak.cli.faults;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Sound files, from which damaged ones are made. */
final class Seeds {

    private Seeds() {}

    static byte[] log() {
        return ("{\"type\":\"session\",\"version\":1,\"startedAt\":\"2026-01-05T10:00:00Z\",\"source\":\"sim\",\"quantity\":\"q\","
                        + "\"unit\":\"V\",\"seek\":\"peak\",\"dwell\":2,\"tool\":\"t\"}\n"
                        + "{\"type\":\"reading\",\"t\":0.5,\"value\":1.5,\"smoothed\":1.5,\"best\":null,\"ofBest\":1,\"trend\":\"rising\",\"condition\":\"ok\"}\n"
                        + "{\"type\":\"adjuster\",\"t\":1,\"name\":\"T1\",\"action\":\"begin\",\"before\":1,\"after\":null,\"gainDb\":null}\n"
                        + "{\"type\":\"link\",\"t\":1,\"state\":\"lost\",\"detail\":\"x\"}\n"
                        + "{\"type\":\"mark\",\"t\":2,\"text\":\"level: cut 0.5\"}\n{\"type\":\"end\",\"t\":2,\"readings\":1,\"reason\":\"quit\"}\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    /** A head of 44 bytes and two tenths of a second of silence. */
    static byte[] wav() {
        ByteBuffer bytes = ByteBuffer.allocate(44 + 3200).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + 3200);
        bytes.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII))
                .putInt(16)
                .putShort((short) 1)
                .putShort((short) 1);
        bytes.putInt(8000).putInt(16_000).putShort((short) 2).putShort((short) 16);
        bytes.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(3200);
        return bytes.array();
    }

    /** Three points of a response. */
    static byte[] points() {
        return "f,l\n450,0.5\n455,1\n460,0.4\n".getBytes(StandardCharsets.UTF_8);
    }
}

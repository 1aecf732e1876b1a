package org.slugpeak.cli.faults;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Damages bytes: a few at random, pieces left out, doubled and moved, numbers and brackets that parsers stumble over. */
final class Mutation {

    private static final List<String> NASTY = List.of(
            "\0",
            "\u001b[2J",
            "-0",
            "1e999",
            "-1e999",
            "NaN",
            "9.9E37",
            "99999999999999999999",
            "[",
            "{",
            "\"",
            "\\",
            ",,,,",
            ";",
            "\n",
            "\r",
            "\uFEFF",
            "\u2028",
            "null",
            "true",
            "#",
            "'''",
            "\"\"\"",
            "-",
            "+",
            ".",
            "0x",
            "1e",
            "%n%s",
            "../");

    private static final int MOST_STEPS = 12;

    private Mutation() {}

    static byte[] of(byte[] seed, SplittableRandom random) {
        if (random.nextInt(20) == 0) {
            byte[] noise = new byte[random.nextInt(5000)];
            random.nextBytes(noise);
            return noise;
        }
        byte[] bytes = seed;
        for (int i = random.nextInt(MOST_STEPS); i >= 0; i--) {
            bytes = step(bytes, random);
        }
        return bytes;
    }

    private static byte[] step(byte[] bytes, SplittableRandom random) {
        int at = random.nextInt(bytes.length + 1);
        int to = Math.min(bytes.length, at + random.nextInt(64));
        byte[] piece = Arrays.copyOfRange(bytes, at, to);
        return switch (random.nextInt(6)) {
            case 0 -> joined(bytes, at, to, new byte[] {(byte) random.nextInt()});
            case 1 -> joined(bytes, at, to, new byte[0]);
            case 2 -> joined(bytes, at, at, piece);
            case 3 ->
                joined(bytes, at, at, NASTY.get(random.nextInt(NASTY.size())).getBytes(StandardCharsets.UTF_8));
            case 4 -> joined(bytes, at, at, repeated(piece, random.nextInt(200)));
            default -> Arrays.copyOf(bytes, at);
        };
    }

    private static byte[] repeated(byte[] piece, int times) {
        byte[] all = new byte[piece.length * times];
        for (int i = 0; i < times; i++) {
            System.arraycopy(piece, 0, all, i * piece.length, piece.length);
        }
        return all;
    }

    private static byte[] joined(byte[] bytes, int from, int to, byte[] between) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.write(bytes, 0, from);
        all.writeBytes(between);
        all.write(bytes, to, bytes.length - to);
        return all.toByteArray();
    }
}

package org.slugpeak.cli.align;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Texts of plans that nobody has thought of, each a valid one. One thread at a time. */
final class RandomPlans {

    private static final List<String> GOALS = List.of("peak", "dip", "zero", "on-dial", "zero-beat", "crystal");
    private static final List<String> POINTS =
            List.of("detector", "avc", "limiter-grid", "ratio-detector", "discriminator");

    private final SplittableRandom random;
    private final boolean points;
    private final List<String> adjusters = new ArrayList<>();
    private int highTension;

    RandomPlans(long seed) {
        random = new SplittableRandom(seed);
        points = random.nextBoolean();
    }

    /** The names of all adjusters of the last text, in order. */
    List<String> adjusters() {
        return adjusters;
    }

    /** Whether any lead of the last text goes where high tension may stand. */
    boolean hasHighTension() {
        return highTension > 0;
    }

    String text() {
        StringBuilder text =
                new StringBuilder("name = \"" + words(6) + "\"\nif-kHz = { first = 1600, second = 455 }\n");
        text.append("chassis = \"")
                .append(oneOf(List.of("live", "transformer", "unknown")))
                .append("\"\n");
        text.append("[[band]]\nname = \"A\"\nfrom-kHz = 500\nto-kHz = 30000\n");
        maybe(text, "oscillator = \"above\"\n");
        maybe(text, "tuning = \"permeability\"\n");
        int stages = 1 + random.nextInt(5);
        for (int i = 0; i < stages; i++) {
            stage(text);
        }
        return text.toString();
    }

    private void stage(StringBuilder text) {
        text.append("[[stage]]\nname = \"").append(words(3)).append("\"\ngenerator-kHz = 1000\n");
        maybe(text, "if = \"second\"\n");
        maybe(text, "band = \"A\"\n");
        maybe(text, "modulation = \"" + words(4) + "\"\n");
        maybe(text, "most-rounds = " + (1 + random.nextInt(50)) + "\n");
        maybe(text, "span-kHz = 20\n");
        if (random.nextBoolean()) {
            text.append("inject = \"").append(words(9)).append("\"\n");
            highTension++;
        }
        if (random.nextBoolean()) {
            text.append("accept = \"skirts\"\n");
            maybe(text, "skirts-kHz = 0.5\n");
        }
        int steps = 1 + random.nextInt(4);
        for (int i = 0; i < steps; i++) {
            step(text);
        }
    }

    private void step(StringBuilder text) {
        String adjuster = "K" + adjusters.size() + " " + words(2);
        adjusters.add(adjuster);
        String goal = oneOf(GOALS);
        text.append("[[stage.step]]\nadjust = \"")
                .append(adjuster)
                .append("\"\nseek = \"")
                .append(goal)
                .append("\"\n");
        if (points) {
            String point = goal.equals("zero-beat") ? "voice-coil" : oneOf(POINTS);
            text.append("meter-point = \"").append(point).append("\"\n");
            highTension++;
        }
        if (goal.equals("peak") || goal.equals("on-dial")) {
            maybe(text, "rock = true\n");
        }
        if (random.nextBoolean()) {
            text.append("damp = \"").append(words(2)).append("\"\ndamp-ohm = 22000\n");
            highTension++;
        }
        maybe(text, "notes = [\"" + words(20) + "\", \"" + "x".repeat(random.nextInt(1, 200)) + "\"]\n");
    }

    private void maybe(StringBuilder text, String line) {
        text.append(random.nextBoolean() ? line : "");
    }

    private <T> T oneOf(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    private String words(int most) {
        return String.join(
                " ",
                IntStream.rangeClosed(0, random.nextInt(most))
                        .mapToObj(i -> Integer.toString(random.nextInt(1 << 20), 36))
                        .toList());
    }
}

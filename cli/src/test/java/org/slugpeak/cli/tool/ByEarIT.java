package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * A stage of a plan, from the questions to the report, by somebody who sees nothing: each key and each turn of the hand follows from what was
 * spoken to its end. The voice is one that writes down what it has said, ten times as quick as people speak (some 15 letters a second).
 */
@EnabledOnOs(OS.LINUX)
final class ByEarIT {

    private static final String VOICE = """
            #!/bin/sh
            [ "$1" = --cancel ] && exit
            ms=$((${#3} * 6))
            sleep $((ms / 1000)).$(printf %03d $((ms % 1000)))
            printf '%s\\n' "$3" >>"$(dirname "$0")/heard"
            """;

    /** Of a twentieth of a second each, on a busy machine. */
    private static final int MOST_LOOKS = 1600;

    @TempDir
    private Path folder;

    private final Map<Pattern, Runnable> answers = new LinkedHashMap<>();
    private int done;
    private boolean turningBack;

    private void on(String heard, Runnable then) {
        answers.put(Pattern.compile(heard), then);
    }

    private List<String> heard() {
        try {
            Path file = folder.resolve("heard");
            return Files.exists(file) ? Files.readAllLines(file) : List.of();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Does what was said since the last time; true when the outcome was told. */
    private boolean obeys() {
        List<String> all = heard();
        for (String line : all.subList(done, all.size())) {
            done++;
            answers.forEach((heard, then) -> {
                if (heard.matcher(line).find()) {
                    then.run();
                }
            });
        }
        return all.stream().anyMatch(line -> line.startsWith("the plan is through: 2 adjustments"));
    }

    private void teach(Window window, DarkBench bench) {
        on("transformer, live, unknown", () -> window.type("transformer\n"));
        on("alone on an isolation transformer\\?", () -> window.type("yes\n"));
        on("Does any lead earth the set", () -> window.type("no\n"));
        on("blocking capacitor in the generator's lead", () -> window.type("yes\n"));
        on("^For the record", () -> window.type("\n"));
        on("set up: |set OFF, unplug, discharge.*set ON", () -> window.type("\r"));
        on("halve the generator", () -> bench.generator(0.5));
        on("halve it once more", () -> bench.generator(0.25));
        on("turn the generator's output off, its mains left on", () -> bench.generator(0));
        on("put the generator('s output)? back", () -> bench.generator(1));
        for (String name : List.of("C2 RF trimmer", "C1 aerial trimmer")) {
            on(name + ": to the maximum", () -> {
                turningBack = false;
                bench.turn(name);
            });
        }
        on("^other way", bench::otherWay);
        on("^back", () -> {
            if (!turningBack) {
                bench.back();
            }
            turningBack = true;
        });
        on("^stop", bench::stop);
        on("turn on, to where it was", () -> {
            turningBack = false;
            bench.turnOn();
        });
    }

    @Test
    void aStageIsDoneByWhatIsSpokenAlone() throws IOException {
        Path voice = Files.writeString(folder.resolve("spd-say"), VOICE);
        assertTrue(voice.toFile().setExecutable(true));
        try (DarkBench bench = new DarkBench("C2 RF trimmer", "C1 aerial trimmer");
                Window window = new Window(folder)) {
            teach(window, bench);
            window.type("PATH=$PWD:$PATH \"$SLUGPEAK\" align larkmoor-6c --only 'MW RF and aerial' --round-limit 3 --ac"
                    + " --cue off --speak --log set.jsonl --from " + bench.address() + "; echo left with $?\n");
            for (int look = 0; !obeys(); look++) {
                assertTrue(look < MOST_LOOKS, () -> String.join("\n", heard()) + "\n\n" + window.shown());
                window.look();
            }
            window.await("left with 0");
            String all = String.join("\n", heard());
            for (String essential : List.of(
                    "C2 RF trimmer: to the maximum",
                    "back, ",
                    "stop",
                    "held",
                    "C2 RF trimmer done, \\+1\\.[0-9] decibels",
                    "C1 aerial trimmer done, \\+1\\.[0-9] decibels",
                    "insulated tool, one hand",
                    "leads, moved only with the set OFF",
                    "please: turn the generator's output off, its mains left on",
                    "please: halve it once more",
                    "the plan is through: set OFF, unplug",
                    "the plan is through: 2 adjustments.*the record is in set\\.jsonl.*slugpeak report")) {
                assertTrue(
                        Pattern.compile(essential).matcher(all).find(), () -> essential + " was not heard in\n" + all);
            }
            assertTrue(bench.lostDb() < 0.2, () -> bench.lostDb() + " dB were lost\n" + all);
        }
    }
}

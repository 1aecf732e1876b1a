package org.slugpeak.cli.faults;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.curve.CurveFile;
import org.slugpeak.bridge.file.CsvOptions;
import org.slugpeak.bridge.file.CsvSource;
import org.slugpeak.bridge.generator.Generators;
import org.slugpeak.bridge.instrument.DecoderFactory;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.log.LogSource;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.scale.PointFile;
import org.slugpeak.bridge.sound.CalibrationStore;
import org.slugpeak.bridge.sound.SoundOptions;
import org.slugpeak.bridge.sound.SoundSources;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.cli.report.Facts;

/**
 * Mutated bytes into one way in, within this process, so that very many can be tried: it gives readings or one {@link
 * BridgeException}, soon, and nothing else.
 */
final class MutatedBytes implements Trial {

    private static final int COUNT = 20_000;
    private static final long SOON_NANOS = TimeUnit.SECONDS.toNanos(10);
    private static final MutedListener NOBODY = new MutedListener();

    private final String word;
    private final byte[] seed;
    private final WayIn wayIn;

    /** Takes the bytes in, from memory or from a file that holds them. */
    @FunctionalInterface
    private interface WayIn {
        void take(byte[] bytes, Path file) throws BridgeException, IOException;
    }

    private MutatedBytes(String word, byte[] seed, WayIn wayIn) {
        this.word = word;
        this.seed = seed;
        this.wayIn = wayIn;
    }

    static List<Trial> all() throws IOException {
        Path shared = Path.of(System.getProperty("slugpeak.shared"));
        byte[] csv = "seconds,volts\n0.0,0.1\n0.1,OL\n0.2,1.5e-3\n# x\n0.3,-2\n".getBytes(StandardCharsets.UTF_8);
        List<Trial> all = new ArrayList<>(parsers(shared, csv));
        for (GoldenFrames family : GoldenFrames.families(shared)) {
            all.add(decoder("frame-" + family.name(), family.name(), family.bytes()));
        }
        return all;
    }

    private static List<Trial> parsers(Path shared, byte[] csv) throws IOException {
        return List.of(
                onFile("csv", csv, ".csv", file -> drain(CsvSource.open(file, CsvOptions.defaults()))),
                onFile(
                        "csv-comma",
                        csv,
                        ".csv",
                        file -> drain(CsvSource.open(file, CsvOptions.defaults().withDecimalComma(true)))),
                new MutatedBytes(
                        "standard-input",
                        csv,
                        (bytes, file) -> drain(CsvSource.standardInput(
                                new ByteArrayInputStream(bytes), CsvOptions.defaults(), System::nanoTime))),
                decoder("line", "generic-line", "0.5\r\n0.75 V\nOL\n1.2E-3\n"),
                decoder("line-timed", "value-and-time", "10,0.5\n20,0.6\n30,0.7\n"),
                decoder("adc", "slugpeak-adc", "# slugpeak-adc 1\n1000,0.5,0\n2000,0.6,0\n"),
                decoder(
                        "scpi",
                        "generic-scpi",
                        "MAKER,MODEL,0,1\r\n0,\"No error\"\r\n0,\"No error\"\r\n+1.25E+00\r\n-113,\"Undefined\"\r\n9.9E37\r\n"),
                onFile("log", Seeds.log(), ".jsonl", file -> drain(LogSource.open(file))),
                onFile(
                        "plan",
                        Files.readAllBytes(shared.resolve("plans/template.toml")),
                        ".toml",
                        file -> PlanFiles.load(file.toString(), OptionalDouble.empty())),
                onFile(
                        "instrument",
                        Files.readAllBytes(shared.resolve("instruments/template.toml")),
                        ".toml",
                        file -> Instruments.create().find(file.toString())),
                onFile(
                        "generator",
                        Files.readAllBytes(shared.resolve("generators/template.toml")),
                        ".toml",
                        file -> Generators.reach(file.toString())),
                onFile(
                        "shop",
                        "maker = \"Ember Fell\"\nmodel = \"54A\"\nowner = \"a neighbour\"\nremarks = \"\"\n"
                                .getBytes(StandardCharsets.UTF_8),
                        ".toml",
                        Facts::read),
                onFile("curve-points", Seeds.points(), ".csv", file -> CurveFile.read(file, false)),
                onFile(
                        "dial-points",
                        "400,397,0.1\n450,452\n".getBytes(StandardCharsets.UTF_8),
                        ".csv",
                        file -> PointFile.read(file, 10, false)),
                onFile(
                        "wav",
                        Seeds.wav(),
                        ".wav",
                        file -> drain(
                                new SoundSources(new CalibrationStore(file.resolveSibling("none")), System::nanoTime)
                                        .openFile(file, SoundOptions.defaults()))));
    }

    @Override
    public String name() {
        return "bytes-" + word;
    }

    @Override
    public int count() {
        return word.equals("wav") || word.startsWith("frame-") ? COUNT / 5 : COUNT;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        take(Mutation.of(seed, random), folder);
        return "";
    }

    /** Takes one piece in, however it came about. */
    void take(byte[] bytes, Path folder) throws IOException {
        long begun = processorNanos();
        try {
            wayIn.take(bytes, folder);
        } catch (BridgeException said) {
            String words = String.valueOf(said.getMessage());
            Trial.require(words.length() < 20_000, "a message of " + words.length() + " letters");
        }
        Trial.require(processorNanos() - begun < SOON_NANOS, "it takes too long");
    }

    /** On a machine with other work the clock on the wall says nothing. */
    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** What takes a file in. */
    @FunctionalInterface
    private interface FileIn {
        void take(Path file) throws BridgeException;
    }

    private static Trial onFile(String word, byte[] seed, String suffix, FileIn in) {
        return new MutatedBytes(
                word, seed, (bytes, folder) -> in.take(Files.write(folder.resolve("mutated" + suffix), bytes)));
    }

    private static Trial decoder(String word, String instrument, String seed) {
        return decoder(word, instrument, seed.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static Trial decoder(String word, String instrument, byte[] seed) {
        DecoderFactory decoders = decoders(instrument);
        return new MutatedBytes(word, seed, (bytes, folder) -> {
            Decoder decoder = decoders.create(MeterSetting.DEFAULT);
            decoder.begin(0, NOBODY);
            long now = 0;
            for (int at = 0; at < bytes.length; at += 7) {
                byte[] chunk = java.util.Arrays.copyOfRange(bytes, at, Math.min(bytes.length, at + 7));
                now += TimeUnit.MILLISECONDS.toNanos(5);
                decoder.decode(chunk, chunk.length, now, NOBODY);
                OptionalLong due = decoder.dueNanos();
                if (due.isPresent() && due.getAsLong() <= now) {
                    decoder.due(now, NOBODY);
                }
            }
        });
    }

    private static DecoderFactory decoders(String instrument) {
        try {
            return Instruments.create().find(instrument).decoders();
        } catch (BridgeException missing) {
            throw new IllegalStateException(missing);
        }
    }

    private static void drain(ReadingSource source) throws BridgeException {
        try (source) {
            while (source.poll(TimeUnit.SECONDS.toNanos(1), NOBODY) != Progress.ENDED) {}
        }
    }
}

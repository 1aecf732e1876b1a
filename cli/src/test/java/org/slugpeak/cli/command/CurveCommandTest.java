package org.slugpeak.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.receiver.CoupledPair;
import org.slugpeak.core.receiver.Tank;

class CurveCommandTest {

    @TempDir
    private Path folder;

    private static CommandRun ask(String commandLine) {
        return CommandRun.of(new CurveCommand(), commandLine.split(" "));
    }

    private static String squeezed(CommandRun run) {
        return run.out().replaceAll(" +", " ");
    }

    /** One pair of tanks, Q 70 each, 455 kHz, as the receiver model has it: not the formula that is fitted. */
    private Path pair(String name, double kappa) throws IOException {
        Tank tank = Tank.tuned(455e3, 110e-12, 70);
        CoupledPair pair = new CoupledPair(tank, tank, kappa / 70);
        StringBuilder text = new StringBuilder("frequency_kHz,level\n");
        for (int kHz = 425; kHz <= 485; kHz++) {
            double level = pair.transimpedance(kHz * 1e3).abs();
            text.append(String.format(Locale.ROOT, "%d,%.8g%n", kHz, level));
        }
        return Files.writeString(folder.resolve(name), text);
    }

    /** At the other benches a hand turns the slugs, and at none of them does the generator move. */
    @ParameterizedTest
    @ValueSource(strings = {"sim", "sim:tarnfield", "sim:multimeter", "sim:sound", "sim:still"})
    void refusesASetAtWhichNobodySetsTheGenerator(String bench) {
        CommandRun run = ask("--from " + bench + " --span 440..470");
        assertEquals(1, run.exitCode());
        assertTrue(run.err().contains("--from sim:plan as before the work, --from sim:aligned"), run.err());
        assertEquals("", run.out());
    }

    @Test
    void takesReadingsOrPointsNotBoth() {
        CommandRun run = ask("--from sim:aligned --points 440,455,470");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("give one of the two; --span says where to measure"), run.err());
    }

    /**
     * Computed: a critically coupled pair is the square root of two times 455/70 = 9.19 kHz wide at -3 dB; straight lines between
     * points a kilohertz apart lose a tenth of a kilohertz.
     */
    @Test
    void tellsCentreWidthsAndSkirtsOfACriticallyCoupledPair() throws IOException {
        CommandRun run = ask("--points " + pair("critical.csv", 1) + " --transformers 1 --centre 455");
        assertEquals(0, run.exitCode(), run.err());
        String out = squeezed(run);
        assertTrue(out.matches("(?s).*centre 45[45]\\.[09]\\d kHz.*"), out);
        assertTrue(out.matches("(?s).*-3 dB 450\\.\\d\\d 459\\.\\d\\d 9\\.\\d\\d\\R.*"), out);
        assertTrue(out.contains("even within 1 dB"), out);
        assertTrue(out.contains("one hump"), out);
        assertTrue(out.matches("(?s).*Q 70\\.\\d+ \\+- 0\\.\\d.*coupling 1\\.0\\d+ \\+- 0\\.0.*"), out);
    }

    /** The attenuator in steps of a tenth of a decibel, one and the same reading: the widths of R1 in shared/reference/rehearsal, 0.2 %. */
    @Test
    void atConstantOutputTheAttenuatorTellsTheResponse() throws IOException {
        Tank tank = Tank.tuned(455e3, 110e-12, 70);
        CoupledPair pair = new CoupledPair(tank, tank, 0.95 / 70);
        double top = pair.transimpedance(455e3).abs();
        StringBuilder text = new StringBuilder("frequency_kHz,dB\n");
        for (int step = 0; step <= 80; step++) {
            double hz = 445e3 + step * 250;
            double db = 60 + 2 * 20 * Math.log10(pair.transimpedance(hz).abs() / top);
            text.append(String.format(Locale.ROOT, "%.2f,%.1f%n", hz / 1e3, db));
        }
        Path file = Files.writeString(folder.resolve("attenuator.csv"), text);
        CommandRun run = ask("--attenuation --points " + file);
        assertEquals(0, run.exitCode(), run.err());
        assertEquals(8.724, width(squeezed(run), "-6 dB"), 0.01 * 8.724);
        assertEquals(15.384, width(squeezed(run), "-20 dB"), 0.02 * 15.384);
    }

    @Test
    void attenuationIsOfATextOfPointsOnly() {
        CommandRun run = ask("--attenuation --from sim:aligned --span 440..470");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("--attenuation goes with a text of --points"), run.err());
        assertEquals(2, ask("--attenuation --points before.jsonl").exitCode());
    }

    @Test
    void ofAMeterOrGeneratorThatIsNotThereNothingElseIsSaid() {
        for (String missing : List.of(
                "--from /dev/ttyNOPE --span 440..470", "--from sim:aligned --span 440..470 --generator /dev/ttyNOPE")) {
            CommandRun run = ask(missing);
            assertEquals(1, run.exitCode());
            assertTrue(run.err().contains("there is no port /dev/ttyNOPE"), run.err());
            assertFalse(run.err().contains("three points"), run.err());
            assertEquals("", run.out());
        }
    }

    @Test
    void warnsOfAnOverCoupledPair() throws IOException {
        CommandRun run = ask("--points " + pair("over.csv", 2) + " --transformers 1");
        assertTrue(squeezed(run).contains("2 humps"), run.out());
        assertTrue(run.out().contains("OVER-COUPLED"), run.out());
    }

    @Test
    void setsBeforeBesideNow() throws IOException {
        CommandRun run = ask("--points " + pair("now.csv", 1) + " --transformers 1 --compare " + pair("before.csv", 2));
        assertTrue(squeezed(run).contains("humps 2 1"), run.out());
    }

    @Test
    void measuresTheSimulatedSetByItself() throws IOException {
        Path log = folder.resolve("curve.jsonl");
        CommandRun run = ask("--from sim:aligned --speed 1000 --span 440..470 --step 1 --centre 455 --log " + log);
        assertEquals(0, run.exitCode(), run.err());
        String out = squeezed(run);
        assertTrue(out.contains("31 points, highest at 455.00 kHz"), out);
        assertTrue(out.contains("one hump"), out);
        assertTrue(out.contains("even within 1 dB"), out);
        // Its true Q is 70 and its coupling 0.949; what the thermionic detector hides is in the uncertainty.
        assertTrue(holds(out, "Q", 70) && holds(out, "coupling", 0.949), out);
        List<String> records = Files.readAllLines(log);
        assertTrue(records.stream().anyMatch(line -> line.contains("\"topic\":\"rest\"")), "no resting reading");
        assertTrue(
                records.stream().noneMatch(line -> line.matches(".*\"(passed|two-peaks|cut-generator|mica)\".*")),
                "the generator's moves were taken for a slug's");
        CommandRun again = ask("--points " + log + " --centre 455");
        assertEquals(run.out(), again.out());
    }

    /**
     * The widths of two pairs of Q 70, 0.949 of critical: rehearsal/README.md, R1, has 8.724 and 15.384 kHz (and 0.95). One percent
     * at -6 dB and two at -20 dB are asked for; without the law they are 8.1 and 13.0 kHz.
     */
    @Test
    void fiveStepsOfTheGeneratorMakeTheWidthsTrue() throws IOException {
        Path log = folder.resolve("law.jsonl");
        CommandRun run =
                ask("--from sim:aligned --speed 1000 --span 440..470 --step 1 --centre 455 --law --log " + log);
        assertEquals(0, run.exitCode(), run.err());
        String out = squeezed(run);
        assertEquals(8.724, width(out, "-6 dB"), 0.01 * 8.724, out);
        assertEquals(15.384, width(out, "-20 dB"), 0.02 * 15.384, out);
        assertTrue(holds(out, "Q", 70) && holds(out, "coupling", 0.949), out);
        assertEquals(run.out(), ask("--points " + log + " --centre 455").out());
    }

    private static double width(String out, String down) {
        Matcher found = Pattern.compile(down + " [0-9.]+ [0-9.]+ ([0-9.]+)").matcher(out);
        assertTrue(found.find(), out);
        return Double.parseDouble(found.group(1));
    }

    /** Whether the figure after the word and its uncertainty, twice, hold the truth. */
    private static boolean holds(String out, String word, double truth) {
        Matcher found =
                Pattern.compile("\\b" + word + " ([0-9.]+) \\+- ([0-9.]+)").matcher(out);
        return found.find()
                && Math.abs(Double.parseDouble(found.group(1)) - truth) <= 2 * Double.parseDouble(found.group(2));
    }

    /** fm/scurve-points.csv: Q 60, critical, the secondary 20 kHz high; the table has the zero at 19.994 kHz. */
    @Test
    void tellsTheZeroOfADiscriminatorInAFile() throws IOException {
        Path table = Path.of(System.getProperty("slugpeak.shared"), "reference", "fm", "scurve-points.csv");
        StringBuilder text = new StringBuilder();
        for (String line : Files.readAllLines(table)) {
            if (line.startsWith("60,60,1,0,20,")) {
                String[] fields = line.split(",", -1);
                text.append(10_700 + Double.parseDouble(fields[5]))
                        .append(',')
                        .append(fields[8])
                        .append('\n');
            }
        }
        Path points = Files.writeString(folder.resolve("s.csv"), text);
        CommandRun run = ask("--points " + points + " --centre 10.7MHz --swing 75 --compare " + points);
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.out().contains("zero at 10719.9") || run.out().contains("zero at 10720.0"), run.out());
        assertTrue(
                run.out().contains("off the centre by 19.9") || run.out().contains("off the centre by 20.0"),
                run.out());
        assertTrue(run.out().contains("75.00 kHz to either side of the zero"), run.out());
        assertTrue(squeezed(run).contains("slope a kHz"), run.out());
        CommandRun mixed = ask("--points " + points + " --compare " + pair("hump.csv", 1));
        assertTrue(mixed.out().contains("not compared"), mixed.out());
    }

    @Test
    void comparesSkirtsWhereItIsTold() throws IOException {
        CommandRun run = ask("--points " + pair("skirts.csv", 1) + " --transformers 1 --skirts 10 --centre 455");
        assertTrue(run.out().contains("skirts 10.00 kHz to either side of 455.00 kHz"), run.out());
    }

    @Test
    void keepsTheLogThatIsThere() throws IOException {
        Path log = Files.writeString(folder.resolve("mine.jsonl"), "mine");
        CommandRun run = ask("--from sim:aligned --speed 1000 --span 440..470 --log " + log);
        assertTrue(run.exitCode() != 0);
        assertEquals("mine", Files.readString(log));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--span 440..470 | --from",
                "--from sim | --span 440..470",
                "--from sim --points x.csv --span 440..470 | --from",
                "--from sim --span 440 | is no span",
                "--from sim --span 470..440 | lower frequency first",
                "--from sim --span 440..470 --step 1Hz | widen --step",
                "--from sim --span 440..470 --dwell -1 | --dwell takes",
                "--points x.csv --law | --law goes with readings",
                "--points x.csv --generator tcp:localhost:5025 | --generator goes with readings",
                "--points x.csv --generator-dial d.csv | --generator-dial goes with readings",
                "--points x.csv --transformers 0 | --transformers takes"
            })
    void refusesWrongUsageWithALineThatSaysWhy(String commandLine, String why) {
        CommandRun run = ask(commandLine);
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains(why), run.err());
    }
}

package org.slugpeak.cli.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.scale.PointFile;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.scale.ScaleEstimate;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

class DialOptionsTest {

    @TempDir
    Path folder;

    private final StringWriter told = new StringWriter();

    private Plan marked(Path file) throws BridgeException {
        Plan plan = PlanFiles.load("tarnfield-54a", OptionalDouble.empty());
        DialOptions options = new DialOptions();
        CommandSpec spec = CommandSpec.create().addMixin("dial", CommandSpec.forAnnotatedObject(options));
        new CommandLine(spec).parseArgs("--generator-dial", file.toString());
        return options.scale(new GeneratorOptions(), plan.plannedHz(), new PrintWriter(told, true))
                .map(plan::marked)
                .orElseThrow();
    }

    private static List<Setup> setups(Plan plan) {
        return plan.stages().stream()
                .flatMap(stage -> stage.steps().stream())
                .map(step -> step.setup())
                .toList();
    }

    /** As {@code scale generator --save} keeps it. The mark by hand: 450 + (455 - 452.6) 50 / 50.5 kHz. */
    @Test
    void eachStepWithinThePointsIsToldItsMark() throws BridgeException {
        Path file = folder.resolve("dial.csv");
        PointFile.write(
                file,
                List.of(
                        new KnownPoint(400e3, 397.2e3, 10),
                        new KnownPoint(450e3, 452.6e3, 10),
                        new KnownPoint(500e3, 503.1e3, 10)));
        for (Setup setup : setups(marked(file))) {
            Optional<ScaleEstimate> mark = setup.particulars().generatorMark();
            assertEquals(setup.generatorHz().equals(OptionalDouble.of(455e3)), mark.isPresent());
            mark.ifPresent(it -> assertEquals(450e3 + 2.4e3 * 50 / 50.5, it.hz(), 1e-6));
        }
        assertEquals(1, told.toString().lines().count(), told.toString());
        assertTrue(
                told.toString().startsWith("no mark is told for 1400 kHz, 600 kHz, 16 MHz, outside the known points"),
                told.toString());
    }

    @Test
    void aFileThatHoldsNoPointsIsRefusedInOneLine() throws IOException {
        Path file = Files.writeString(folder.resolve("dial.csv"), "400,397.2\n");
        BadInput refused = assertThrows(BadInput.class, () -> marked(file));
        assertEquals(1, String.valueOf(refused.getMessage()).lines().count());
        assertTrue(String.valueOf(refused.getMessage()).contains("dial.csv"), refused.getMessage());
    }
}

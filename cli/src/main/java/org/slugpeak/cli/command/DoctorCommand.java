package org.slugpeak.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.serial.PortInfo;
import org.slugpeak.bridge.serial.SerialPorts;
import org.slugpeak.bridge.sound.SoundInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.check.Discretion;
import org.slugpeak.cli.check.Surroundings;
import org.slugpeak.cli.cue.SoundOutputs;
import org.slugpeak.cli.display.Console;
import org.slugpeak.cli.program.StateFolder;
import org.slugpeak.cli.program.Version;
import org.slugpeak.cli.words.CheckPhrase;
import org.slugpeak.cli.words.DoctorPhrase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Tells what whoever helps would ask first. */
@Command(name = "doctor", mixinStandardHelpOptions = true)
public final class DoctorCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws BridgeException {
        List<String> lines = new ArrayList<>(List.of(Version.tool()));
        lines.addAll(new Surroundings(System.getenv(), System.getProperties(), StateFolder.path())
                .lines(Console.isOutputTerminal()));
        list(lines, CheckPhrase.SERIAL_PORTS.of(), ports(), CheckPhrase.NO_PORTS.of());
        list(lines, CheckPhrase.SOUND_INPUTS.of(), inputs(), CheckPhrase.NO_INPUTS.of());
        list(lines, DoctorPhrase.SOUND_OUTPUTS.of(), SoundOutputs.names(), DoctorPhrase.NO_OUTPUTS.of());
        Discretion discretion =
                new Discretion(System.getProperty("user.home", ""), System.getProperty("user.name", ""));
        PrintWriter out = spec.commandLine().getOut();
        lines.forEach(line -> out.println(discretion.of(line)));
        out.flush();
        return 0;
    }

    private static void list(List<String> lines, String title, List<String> found, String none) {
        lines.add(title);
        (found.isEmpty() ? List.of(none) : found).forEach(each -> lines.add("  " + each));
    }

    private static List<String> ports() throws BridgeException {
        return SerialPorts.list().stream().map(DoctorCommand::port).toList();
    }

    private static String port(PortInfo port) {
        return String.format(
                Locale.ROOT, "%-14s %s; %s", port.path(), port.description(), Surroundings.right(Path.of(port.path())));
    }

    private static List<String> inputs() {
        return SoundInput.list().stream().map(input -> "sound:" + input.name()).toList();
    }
}

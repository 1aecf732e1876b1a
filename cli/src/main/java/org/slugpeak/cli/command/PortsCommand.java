package org.slugpeak.cli.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.generator.Generators;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.serial.PortInfo;
import org.slugpeak.bridge.serial.SerialPorts;
import org.slugpeak.bridge.sim.SimSource;
import org.slugpeak.bridge.sound.SoundInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.words.CheckPhrase;
import org.slugpeak.cli.words.GeneratorPhrase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists what readings could come from. */
@Command(name = "ports", mixinStandardHelpOptions = true)
public final class PortsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws BridgeException {
        PrintWriter out = spec.commandLine().getOut();
        out.println(CheckPhrase.SERIAL_PORTS.of());
        List<PortInfo> ports = SerialPorts.list();
        ports.forEach(port -> out.println(line(port.stablePath().orElse(port.path()), port.description())));
        if (ports.isEmpty()) {
            out.println("  " + CheckPhrase.NO_PORTS.of());
        }
        out.println(CheckPhrase.SOUND_INPUTS.of());
        List<SoundInput> inputs = SoundInput.list();
        inputs.forEach(input -> out.println(line("sound:" + input.name(), input.description())));
        if (inputs.isEmpty()) {
            out.println("  " + CheckPhrase.NO_INPUTS.of());
        }
        out.println(CheckPhrase.BENCHES.of());
        SimSource.names().forEach(name -> out.println("  sim:" + name));
        out.println(CheckPhrase.INSTRUMENTS.of());
        Instruments.SHIPPED.forEach(name -> out.println("  " + name));
        out.println(GeneratorPhrase.KINDS.of());
        Generators.SHIPPED.forEach(name -> out.println("  " + name));
        out.flush();
        return 0;
    }

    private static String line(String address, String description) {
        return String.format(Locale.ROOT, "  %-40s %s", address, description);
    }
}

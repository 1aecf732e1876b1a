package org.slugpeak.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.run.JsonOutput;
import org.slugpeak.cli.run.Notices;
import org.slugpeak.cli.run.SessionOutput;
import picocli.CommandLine.Option;

/** Where the records of a session go. */
final class OutputOptions {

    @Option(
            names = "--json",
            description = "Write every record as a line of JSON on standard output, for another program.")
    private boolean json;

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "Keep the session in FILE (JSON lines). A file that is there already is never touched.")
    private Optional<Path> log = Optional.empty();

    /** Opens everything that was asked for; the log first, since it may be refused. */
    List<SessionOutput> open() throws BridgeException {
        List<SessionOutput> outputs = new ArrayList<>();
        if (log.isPresent()) {
            throw new IllegalStateException();
        }
        if (json) {
            outputs.add(new JsonOutput(new FileOutputStream(FileDescriptor.out), System.err));
        }
        outputs.add(new Notices(System.err));
        return outputs;
    }
}

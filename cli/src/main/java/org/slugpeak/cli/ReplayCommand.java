package org.slugpeak.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Runs the analysis over a recorded session. */
@Command(name = "replay", mixinStandardHelpOptions = true)
final class ReplayCommand implements Callable<Integer> {
    @Override
    public Integer call() {
        return 1;
    }
}

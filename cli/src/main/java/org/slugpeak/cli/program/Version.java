package org.slugpeak.cli.program;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The program's own name and version. */
public final class Version implements IVersionProvider {

    /**
     * Name and version as written in session records.
     *
     * @return for example {@code slugpeak 0.1.0}
     */
    public static String tool() {
        String version = Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                .orElse("(development)");
        return "slugpeak " + version;
    }

    @Override
    public String[] getVersion() {
        return new String[] {tool()};
    }
}

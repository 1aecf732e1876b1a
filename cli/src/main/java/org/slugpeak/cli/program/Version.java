package org.slugpeak.cli.program;

import java.lang.module.ModuleDescriptor;
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
                .or(Version::ofModule)
                .orElse("(development)");
        return "slugpeak " + version;
    }

    /** In the archive that brings its own Java the classes come from a module, which has no manifest. */
    private static Optional<String> ofModule() {
        return Optional.ofNullable(Version.class.getModule().getDescriptor()).flatMap(ModuleDescriptor::rawVersion);
    }

    @Override
    public String[] getVersion() {
        return new String[] {tool()};
    }
}

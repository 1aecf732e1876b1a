package org.slugpeak.cli.program;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/** Where the program keeps what it writes for itself, by the custom of each system. */
public final class StateFolder {

    private StateFolder() {}

    /**
     * The folder for this user.
     *
     * @return it need not exist yet
     */
    public static Path path() {
        return path(System.getenv(), System.getProperties());
    }

    /**
     * The program's log file.
     *
     * @return it need not exist yet
     */
    public static Path logFile() {
        return path().resolve("slugpeak.log");
    }

    /** XDG Base Directory Specification 0.8 on Linux; Application Support and LOCALAPPDATA by the custom of the others. */
    static Path path(Map<String, String> environment, Properties system) {
        Path home = Path.of(system.getProperty("user.home", "."));
        String os = system.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (os.contains("windows")) {
            String local = environment.getOrDefault("LOCALAPPDATA", "");
            return (local.isEmpty() ? home.resolve("AppData").resolve("Local") : Path.of(local)).resolve("slugpeak");
        }
        if (os.contains("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("slugpeak");
        }
        String state = environment.getOrDefault("XDG_STATE_HOME", "");
        boolean usable = !state.isEmpty() && Path.of(state).isAbsolute();
        return (usable ? Path.of(state) : home.resolve(".local").resolve("state")).resolve("slugpeak");
    }
}

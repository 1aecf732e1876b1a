package org.slugpeak.cli.sessions;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32C;
import org.slugpeak.bridge.disk.SmallFile;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.bridge.toml.TomlFile;

/**
 * What the user's settings say of logs that are kept. Immutable; any thread may use it.
 *
 * @param folder where the logs are; empty where it is not set
 * @param index address of a shared index; empty where this user has one of his own
 * @param bench what this computer is called where several share an index
 */
public record KeepingPlace(Optional<Path> folder, Optional<String> index, Optional<String> bench) {

    /** In the folder of state. */
    public static final String FILE = "settings.toml";

    /**
     * Reads the settings.
     *
     * @param state the folder of state
     * @return nothing set where there is no such file
     * @throws BadConfiguration where it cannot be read, or says something else
     */
    public static KeepingPlace read(Path state) throws BadConfiguration {
        Path file = state.resolve(FILE);
        if (!Files.exists(file)) {
            return new KeepingPlace(Optional.empty(), Optional.empty(), Optional.empty());
        }
        try {
            return TomlFile.read(FILE, "settings", SmallFile.read(file), KeepingPlace::of);
        } catch (IOException e) {
            throw new BadConfiguration(file + " cannot be read (" + e.getMessage() + "): mend or delete it", e);
        }
    }

    private static KeepingPlace of(Section top) {
        return new KeepingPlace(top.text("sessions").map(Path::of), top.text("index"), top.text("bench"));
    }

    /**
     * Where the index of a folder is.
     *
     * @param state the folder of state
     * @param logs the folder of the logs
     * @return a file of this user's, one for each folder, unless a shared one is set
     * @throws BadConfiguration where the address is not understood
     */
    public IndexPlace place(Path state, Path logs) throws BadConfiguration {
        if (index.isPresent()) {
            return IndexPlace.of(index.get());
        }
        CRC32C sum = new CRC32C();
        sum.update(logs.toString().getBytes(StandardCharsets.UTF_8));
        return new IndexPlace.Embedded(
                state.resolve("sessions-" + Long.toHexString(sum.getValue())).toAbsolutePath());
    }

    /**
     * What this bench is called: as it is set, else as its system calls it.
     *
     * @param environment of this process
     * @return never empty
     */
    public String benchName(Map<String, String> environment) {
        return bench.or(() -> Stream.of("COMPUTERNAME", "HOSTNAME")
                        .map(name -> environment.getOrDefault(name, ""))
                        .filter(name -> !name.isBlank())
                        .findFirst())
                .or(KeepingPlace::hostFile)
                .orElse("bench");
    }

    /** hostname(5). */
    private static Optional<String> hostFile() {
        try {
            return SmallFile.read(Path.of("/etc/hostname"))
                    .lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}

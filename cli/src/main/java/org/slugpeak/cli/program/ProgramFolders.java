package org.slugpeak.cli.program;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The folders in which the system looks for programs. All methods are pure. */
public final class ProgramFolders {

    private ProgramFolders() {}

    /**
     * The folders of {@code PATH}, in their order.
     *
     * @param environment of the process; Windows writes the name of the variable in other letters
     * @return without entries that are no folder names, as some installers leave them
     */
    public static Stream<Path> of(Map<String, String> environment) {
        return of(environment, File.pathSeparator);
    }

    static Stream<Path> of(Map<String, String> environment, String separator) {
        return environment.entrySet().stream()
                .filter(entry -> entry.getKey().equalsIgnoreCase("PATH"))
                .flatMap(entry -> Stream.of(entry.getValue().split(Pattern.quote(separator))))
                .map(folder -> folder.replace("\"", "").strip())
                .filter(folder -> !folder.isEmpty())
                .flatMap(folder -> folder(folder).stream());
    }

    private static Optional<Path> folder(String name) {
        try {
            return Optional.of(Path.of(name));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}

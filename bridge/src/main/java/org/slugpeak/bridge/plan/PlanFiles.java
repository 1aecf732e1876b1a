package org.slugpeak.bridge.plan;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.slugpeak.bridge.disk.SmallFile;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.core.plan.Plan;

/** Finds plans by file or by the name of one that comes with the program. All methods may be called by any thread. */
public final class PlanFiles {

    /** The plans that come with the program. */
    public static final List<String> SHIPPED =
            List.of("am-superhet", "tarnfield-54a", "quillmere-fm-8", "larkmoor-6c", "brackenmere-cr2");

    private static final String FOLDER = "/org/slugpeak/shared/plans/";

    private PlanFiles() {}

    /**
     * Reads a plan.
     *
     * @param nameOrFile one of {@link #SHIPPED}, or a file
     * @param intermediateHz intermediate frequency for a plan that leaves it open, Hz
     * @return the plan
     * @throws BadConfiguration where there is no such plan, or with every mistake in it, one a line
     */
    public static Plan load(String nameOrFile, OptionalDouble intermediateHz) throws BadConfiguration {
        String text = SHIPPED.contains(nameOrFile) ? shipped(nameOrFile) : file(nameOrFile);
        return new PlanReader(nameOrFile, intermediateHz).read(text);
    }

    private static String shipped(String name) throws BadConfiguration {
        try (InputStream stream = PlanFiles.class.getResourceAsStream(FOLDER + name + ".toml")) {
            if (stream == null) {
                throw new BadConfiguration("plan '" + name + "' is missing from this installation: install again");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new BadConfiguration("plan '" + name + "' cannot be read from this installation: install again", e);
        }
    }

    private static String file(String file) throws BadConfiguration {
        try {
            return SmallFile.read(Path.of(file));
        } catch (NoSuchFileException e) {
            throw new BadConfiguration(
                    "there is no plan '" + file + "': give a file, or one of " + String.join(", ", SHIPPED), e);
        } catch (IOException e) {
            throw new BadConfiguration(
                    "plan " + file + " cannot be read (" + e.getMessage() + "): give a text file in UTF-8", e);
        }
    }
}

package org.slugpeak.bridge.instrument;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.slugpeak.bridge.disk.SmallFile;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.toml.Suggestion;

/**
 * Where descriptions are found: some come with the tool, others are the user's own files. Immutable; any thread may use it.
 *
 * @param kind what is described, for the messages: an instrument, a generator
 * @param folder in which those of the tool are, as a path of resources that ends in a slash
 * @param shipped the names of those of the tool
 */
public record DescriptionFiles(String kind, String folder, List<String> shipped) {

    private static final String SUFFIX = ".toml";

    /** Copies the list. */
    public DescriptionFiles {
        shipped = List.copyOf(shipped);
    }

    /**
     * Makes something of a description.
     *
     * @param <T> what
     */
    @FunctionalInterface
    public interface Reader<T> {

        /**
         * Reads it.
         *
         * @param file its name, for the messages
         * @param text what is in it
         * @return what was described
         * @throws BadConfiguration with one line for each mistake
         */
        T read(String file, String text) throws BadConfiguration;
    }

    /**
     * Finds a description and reads it.
     *
     * @param nameOrFile the name of one that comes with the tool, or a file whose name ends in {@code .toml}
     * @param reader makes something of it
     * @param <T> what
     * @return what was described
     * @throws BadConfiguration with one line for each mistake, where it cannot be used
     */
    public <T> T find(String nameOrFile, Reader<T> reader) throws BadConfiguration {
        return nameOrFile.endsWith(SUFFIX) ? fromFile(Path.of(nameOrFile), reader) : ofTheTool(nameOrFile, reader);
    }

    private <T> T ofTheTool(String name, Reader<T> reader) throws BadConfiguration {
        if (!shipped.contains(name)) {
            throw new BadConfiguration("no " + kind + " is called '" + name + "'" + Suggestion.didYouMean(name, shipped)
                    + " (or name a file that ends in .toml)");
        }
        try (InputStream in = DescriptionFiles.class.getResourceAsStream(folder + name + SUFFIX)) {
            if (in == null) {
                throw new BadConfiguration("the description of '" + name + "' is missing: install slugpeak anew");
            }
            return reader.read(name + SUFFIX, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new BadConfiguration("the description of '" + name + "' cannot be read: install slugpeak anew", e);
        }
    }

    private <T> T fromFile(Path file, Reader<T> reader) throws BadConfiguration {
        try {
            return reader.read(file.toString(), SmallFile.read(file));
        } catch (NoSuchFileException e) {
            throw new BadConfiguration("there is no " + kind + " description " + file + ": is the name right?", e);
        } catch (IOException e) {
            throw new BadConfiguration(
                    file + " cannot be read (" + e.getMessage() + "): give a text file in UTF-8 that you may read", e);
        }
    }
}

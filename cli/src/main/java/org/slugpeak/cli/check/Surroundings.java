package org.slugpeak.cli.check;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import org.slugpeak.cli.words.DoctorPhrase;

/**
 * What somebody who is asked for help would ask first of the machine. Immutable; any thread may use it.
 *
 * @param environment the variables of the process
 * @param system the properties of the virtual machine
 * @param state the folder for what the program keeps for itself
 */
public record Surroundings(Map<String, String> environment, Properties system, Path state) {

    /**
     * All of it but ports and sound.
     *
     * @param toScreen whether the output goes to a terminal
     * @return a line each
     */
    public List<String> lines(boolean toScreen) {
        return List.of(
                line(
                        DoctorPhrase.SYSTEM,
                        system(property("os.name") + " " + property("os.version") + " " + property("os.arch"))),
                line(DoctorPhrase.JAVA, java(property("java.version"), property("java.vendor"))),
                line(DoctorPhrase.TERMINAL, terminal(environment.getOrDefault("TERM", "-"), toScreen)),
                line(DoctorPhrase.LANGUAGE, language()),
                line(DoctorPhrase.STATE, stateFolder()));
    }

    private String system(String name) {
        return property("os.name").equals("Linux") ? name : DoctorPhrase.SYSTEM_NEVER_SEEN.of(name);
    }

    private static String terminal(String name, boolean toScreen) {
        return toScreen ? DoctorPhrase.OUTPUT_SCREEN.of(name) : DoctorPhrase.OUTPUT_PIPE.of(name);
    }

    private static String line(DoctorPhrase what, String value) {
        return String.format(Locale.ROOT, "  %-14s %s", what.of(), value);
    }

    private String property(String name) {
        return system.getProperty(name, "-");
    }

    private String java(String version, String vendor) {
        Path own = Path.of(system.getProperty("slugpeak.home", "."), "runtime");
        boolean isOwn = same(own, Path.of(property("java.home")));
        return isOwn ? DoctorPhrase.JAVA_OWN.of(version, vendor) : DoctorPhrase.JAVA_FOUND.of(version, vendor);
    }

    private static boolean same(Path one, Path other) {
        return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
    }

    private String language() {
        return Locale.getDefault(Locale.Category.DISPLAY).toLanguageTag() + ", " + property("native.encoding");
    }

    private String stateFolder() {
        if (!Files.exists(state)) {
            return DoctorPhrase.STATE_NEW.of(state);
        }
        boolean writable = Files.isDirectory(state) && Files.isWritable(state);
        return writable ? DoctorPhrase.STATE_USED.of(state) : DoctorPhrase.STATE_SHUT.of(state);
    }

    /**
     * Whether a port may be used; it is not opened.
     *
     * @param port its path
     * @return a word, and what to do where it may not
     */
    public static String right(Path port) {
        if (!Files.exists(port) || (Files.isReadable(port) && Files.isWritable(port))) {
            return DoctorPhrase.PORT_YOURS.of();
        }
        try {
            return DoctorPhrase.PORT_OF_GROUP.of(Files.readAttributes(port, PosixFileAttributes.class)
                    .group()
                    .getName());
        } catch (IOException | UnsupportedOperationException e) {
            return DoctorPhrase.PORT_NOT_YOURS.of();
        }
    }
}

package org.slugpeak.bridge.sound;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.slugpeak.bridge.source.BadConfiguration;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/**
 * Keeps calibrations, one small TOML file a device and channel, so that a file can be read, corrected or deleted by hand.
 * One thread at a time; a file is replaced as a whole.
 */
public final class CalibrationStore {

    private static final String UNIT_KEY = "volts-per-full-scale";

    private final Path folder;

    /**
     * A store in a folder, which need not be there.
     *
     * @param folder where the files are
     */
    public CalibrationStore(Path folder) {
        this.folder = folder;
    }

    /**
     * Finds what was stored.
     *
     * @param device name of the sound input
     * @param channel which channel
     * @return the calibration; empty if there is none
     * @throws BadConfiguration if there is one and it cannot be read
     */
    public Optional<SoundCalibration> find(String device, Channel channel) throws BadConfiguration {
        Path file = file(device, channel);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            TomlParseResult toml = Toml.parse(file);
            if (toml.hasErrors()) {
                throw bad(file, String.valueOf(toml.errors().get(0).getMessage()));
            }
            return Optional.of(new SoundCalibration(
                    device,
                    channel,
                    number(toml, UNIT_KEY),
                    number(toml, "at-volts"),
                    Instant.parse(Objects.requireNonNullElse(toml.getString("calibrated-at"), ""))));
        } catch (IOException | IllegalArgumentException | DateTimeParseException e) {
            throw bad(file, String.valueOf(e.getMessage()));
        }
    }

    /**
     * Stores a calibration in place of an older one.
     *
     * @param calibration what to keep
     * @return the file it is in
     * @throws BadConfiguration if it cannot be written
     */
    public Path save(SoundCalibration calibration) throws BadConfiguration {
        Path file = file(calibration.device(), calibration.channel());
        try {
            Files.createDirectories(folder);
            Path fresh = Files.createTempFile(folder, "calibration", ".new");
            Files.writeString(fresh, text(calibration));
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            return file;
        } catch (IOException e) {
            throw new BadConfiguration(
                    "the calibration cannot be kept in " + folder + ": " + e.getMessage() + "; may you write there?",
                    e);
        }
    }

    private Path file(String device, Channel channel) {
        String plain =
                device.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "").toLowerCase(Locale.ROOT);
        // Two names may become the same when written plainly; their hashes keep them apart.
        String tag = String.format(Locale.ROOT, "%08x", device.hashCode());
        return folder.resolve(plain + "-" + tag + "-" + channel.code() + ".toml");
    }

    private static String text(SoundCalibration calibration) {
        return "# Made by slugpeak check --from sound --volts; delete this file to go back to levels relative to full scale.\n"
                + "device = \"" + Toml.tomlEscape(calibration.device()) + "\"\n"
                + "channel = \"" + calibration.channel().code() + "\"\n"
                + UNIT_KEY + " = " + calibration.voltsPerFullScale() + "\n"
                + "at-volts = " + calibration.atVolts() + "\n"
                + "calibrated-at = \"" + calibration.calibratedAt() + "\"\n";
    }

    private static double number(TomlParseResult toml, String key) {
        Object value = toml.get(key);
        if (value instanceof Number number) {
            return number.doubleValue();
        }
        throw new IllegalArgumentException("'" + key + "' must be a number");
    }

    private static BadConfiguration bad(Path file, String problem) {
        return new BadConfiguration(file + " is no calibration: " + problem + "; delete it and calibrate again");
    }
}

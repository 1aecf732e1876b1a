package org.slugpeak.bridge.sound;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import org.slugpeak.bridge.disk.Draft;
import org.slugpeak.bridge.disk.SmallFile;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.bridge.toml.TomlFile;
import org.tomlj.Toml;

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
            String name = String.valueOf(file.getFileName());
            return Optional.of(
                    TomlFile.read(name, "calibration", SmallFile.read(file), top -> calibration(top, device, channel)));
        } catch (IOException | BadConfiguration e) {
            throw new BadConfiguration(
                    file + " is no calibration: " + e.getMessage() + "; delete it and calibrate again", e);
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
            try (Draft draft = Draft.of(file)) {
                draft.out().write(text(calibration).getBytes(StandardCharsets.UTF_8));
                draft.replace();
            }
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

    private static SoundCalibration calibration(Section top, String device, Channel channel) {
        top.text("device");
        top.text("channel");
        return new SoundCalibration(
                device, channel, top.requiredPositive(UNIT_KEY), top.requiredPositive("at-volts"), calibratedAt(top));
    }

    private static Instant calibratedAt(Section top) {
        String key = "calibrated-at";
        String written = top.requiredText(key);
        try {
            return written.isEmpty() ? Instant.EPOCH : Instant.parse(written);
        } catch (DateTimeParseException e) {
            top.problem(key, "'" + key + "' must be a moment such as 2026-11-25T08:00:00Z, not '" + written + "'");
            return Instant.EPOCH;
        }
    }
}

package org.slugpeak.bridge.serial;

import java.util.Optional;

/**
 * What is known of a serial port without opening it. Immutable; any thread may use it.
 *
 * @param path as it is given to {@code --from}
 * @param description what the system calls it, never empty
 * @param stablePath a path that stays with the device whichever socket it is plugged into
 */
public record PortInfo(String path, String description, Optional<String> stablePath) {}

package org.slugpeak.bridge.sound;

import java.util.List;

/**
 * A sound input of this computer. Immutable; any thread may use it.
 *
 * @param name how it is addressed: {@code sound:NAME}, or any part of the name that fits no other
 * @param description what the system says of it
 */
public record SoundInput(String name, String description) {

    /**
     * The sound inputs that are there now. The first is the one that {@code sound} means. This loads the sound system of the
     * Java runtime, which takes some ten milliseconds; nothing else here does before an input is opened.
     *
     * @return possibly none
     */
    public static List<SoundInput> list() {
        return JavaSound.inputs();
    }
}

package org.slugpeak.core.plan;

/**
 * A tuning range; refused with an {@link IllegalArgumentException} unless its ends ascend. Immutable; any thread may use it.
 *
 * @param name as on the set, for example {@code MW}
 * @param lowHz lower end, Hz
 * @param highHz upper end, Hz
 */
public record Band(String name, double lowHz, double highHz) {

    public Band {
        if (!(0 < lowHz && lowHz < highHz)) {
            throw new IllegalArgumentException("the ends of band " + name + " must ascend");
        }
    }
}

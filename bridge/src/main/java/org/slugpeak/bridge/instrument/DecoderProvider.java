package org.slugpeak.bridge.instrument;

import org.slugpeak.bridge.toml.Section;

/**
 * A language that instruments speak. A new one is one package with one implementation of this, named in
 * {@code META-INF/services}; two that claim the same word stop the program. Any thread may use it.
 */
public interface DecoderProvider {

    /**
     * The word behind {@code speaks} in a description, which is also the name of the table with the particulars.
     *
     * @return lower case, for example {@code line}
     */
    String language();

    /**
     * Reads the particulars of one instrument. Mistakes are noted in the section, not thrown; where there are any, the
     * factory is never asked.
     *
     * @param section the description's table of that name, empty where it has none
     * @return makes the decoders
     */
    DecoderFactory read(Section section);
}

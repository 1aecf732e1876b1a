package org.slugpeak.core.rehearsal;

/**
 * The generator that is moved until a crystal answers, and stays there for every step that wants the measured frequency. One thread
 * at a time.
 *
 * @param crystalHz series resonance of the crystal
 * @param generator how far from it the generator stands, Hz
 */
record CrystalSearch(double crystalHz, Knob generator) {

    double fedHz() {
        return crystalHz + generator.effect();
    }
}

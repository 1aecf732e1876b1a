package org.slugpeak.bridge.generator;

import java.util.Optional;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.GeneratorSetting;

/** A generator that never keeps its caller waiting. Called in the session's thread. */
public interface FedGenerator {

    /**
     * What it can do.
     *
     * @return what is set from here
     */
    GeneratorReach reach();

    /**
     * Wishes it to stand so; an older wish that was not fulfilled yet is dropped.
     *
     * @param wanted how it is to stand
     */
    void want(GeneratorSetting wanted);

    /**
     * What came of a wish, once.
     *
     * @return empty where there is nothing new
     */
    Optional<GeneratorNews> news();
}

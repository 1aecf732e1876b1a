package org.slugpeak.cli.feed;

import java.util.Optional;
import org.slugpeak.bridge.generator.GeneratorNews;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.GeneratorSetting;

/** A generator that never keeps its caller waiting. Called in the session's thread. */
public interface FedGenerator {

    /** What it can do. */
    GeneratorReach reach();

    /** Wishes it to stand so; the newest wish counts. */
    void want(GeneratorSetting wanted);

    /** What came of a wish, once. */
    Optional<GeneratorNews> news();
}

package org.slugpeak.bridge.generator;

import org.slugpeak.core.generator.GeneratorSetting;

/** What came of a wish to a generator. Immutable; any thread may use it. */
public sealed interface GeneratorNews {

    /**
     * Calls the one method of the matcher that fits.
     *
     * @param matcher has a method for every kind of news
     */
    void match(Matcher matcher);

    /** One method for each kind of news. */
    interface Matcher {

        /**
         * It stands as was wished.
         *
         * @param it the news
         */
        void stands(Stands it);

        /**
         * It does not.
         *
         * @param it the news
         */
        void fails(Fails it);
    }

    /**
     * It stands, and its signal has settled.
     *
     * @param wanted what was wished
     * @param real as it reads back
     */
    record Stands(GeneratorSetting wanted, GeneratorSetting real) implements GeneratorNews {

        @Override
        public void match(Matcher matcher) {
            matcher.stands(this);
        }
    }

    /**
     * It does not stand as was wished.
     *
     * @param gone whether it does not answer, and is told the wish again as soon as it does; otherwise it refuses
     * @param problem one line: what was seen and what to do
     */
    record Fails(boolean gone, String problem) implements GeneratorNews {

        @Override
        public void match(Matcher matcher) {
            matcher.fails(this);
        }
    }
}

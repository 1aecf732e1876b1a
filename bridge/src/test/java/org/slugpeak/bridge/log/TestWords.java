package org.slugpeak.bridge.log;

import org.slugpeak.core.session.SessionRecord;

/** Words for tests of what is done with words: the name of the kind. */
final class TestWords implements Sentences {

    @Override
    public String of(SessionRecord record) {
        return record.getClass().getSimpleName();
    }
}

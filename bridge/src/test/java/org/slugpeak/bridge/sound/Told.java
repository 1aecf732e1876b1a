package org.slugpeak.bridge.sound;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Untimed;

/** All that a source told, in order of kind. */
final class Told implements SourceListener {

    final List<Reading> readings = new ArrayList<>();
    final List<String> links = new ArrayList<>();
    final List<String> garbled = new ArrayList<>();
    final List<SessionRecord> remarks = new ArrayList<>();

    static Told all(ReadingSource source) throws BridgeException {
        Told told = new Told();
        Progress progress;
        do {
            progress = source.poll(0, told);
        } while (progress != Progress.ENDED);
        return told;
    }

    @Override
    public void reading(Reading reading) {
        readings.add(reading);
    }

    @Override
    public void link(long tNanos, Link.State state, LinkDetail detail) {
        links.add(state.code());
    }

    @Override
    public void garbled(String where, String problem) {
        garbled.add(problem);
    }

    @Override
    public void remark(Untimed what) {
        remarks.add(what.at(0));
    }

    Reading last() {
        return readings.get(readings.size() - 1);
    }
}

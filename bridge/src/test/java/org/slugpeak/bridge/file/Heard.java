package org.slugpeak.bridge.file;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.source.TypedWord;
import org.slugpeak.bridge.testkit.ShortDetail;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Untimed;

/** Notes all that a source delivers. */
final class Heard implements SourceListener {

    final List<Reading> readings = new ArrayList<>();
    final List<String> links = new ArrayList<>();
    final List<String> garbled = new ArrayList<>();
    final List<SessionRecord> remarks = new ArrayList<>();
    final List<TypedWord> typed = new ArrayList<>();

    /** Polls until the source ends. */
    static Heard all(CsvSource source) throws BadInput {
        Heard heard = new Heard();
        heard.listenTo(source);
        return heard;
    }

    void listenTo(CsvSource source) throws BadInput {
        while (source.poll(1_000_000_000, this) != ReadingSource.Progress.ENDED) {}
    }

    List<Double> values() {
        return readings.stream().map(Reading::value).toList();
    }

    List<Double> seconds() {
        return readings.stream().map(reading -> reading.tNanos() / 1e9).toList();
    }

    @Override
    public void reading(Reading reading) {
        readings.add(reading);
    }

    @Override
    public void link(long tNanos, Link.State state, LinkDetail detail) {
        links.add(state.code() + ": " + ShortDetail.of(detail));
    }

    @Override
    public void remark(Untimed what) {
        remarks.add(what.at(0));
    }

    @Override
    public void typed(TypedWord word) {
        typed.add(word);
    }

    @Override
    public void garbled(String where, String problem) {
        garbled.add(where + ": " + problem);
    }
}

package org.slugpeak.core.level;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.core.reading.Condition;

/** Writes down what the watch says, one line each: kind or topic, and the figure where there is one. */
final class Told implements LevelListener {

    record Line(long tNanos, String topic, String text, double amount) {}

    final List<Line> lines = new ArrayList<>();

    @Override
    public void overload(long tNanos, Condition condition, String advice) {
        lines.add(new Line(tNanos, condition.code(), advice, Double.NaN));
    }

    @Override
    public void flattening(long tNanos, String advice) {
        lines.add(new Line(tNanos, "flattening", advice, Double.NaN));
    }

    @Override
    public void cleared(long tNanos) {
        lines.add(new Line(tNanos, "cleared", "", Double.NaN));
    }

    @Override
    public void weak(long tNanos, double snrDb, String advice) {
        lines.add(new Line(tNanos, "weak", advice, snrDb));
    }

    @Override
    public void drift(long tNanos, double dbPerMinute) {
        lines.add(new Line(tNanos, "drift", "", dbPerMinute));
    }

    @Override
    public void advice(long tNanos, String topic, String text, double amount) {
        lines.add(new Line(tNanos, topic, text, amount));
    }

    List<String> topics() {
        return lines.stream().map(Line::topic).toList();
    }

    boolean heard(String topic) {
        return topics().contains(topic);
    }

    Line first(String topic) {
        return lines.stream()
                .filter(line -> line.topic().equals(topic))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + topic + " in " + topics()));
    }

    List<Line> all(String topic) {
        return lines.stream().filter(line -> line.topic().equals(topic)).toList();
    }
}

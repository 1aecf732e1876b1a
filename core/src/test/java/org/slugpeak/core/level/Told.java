package org.slugpeak.core.level;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.core.reading.Condition;

/** Writes down what the watch says, one line each: what it is, and the figure where there is one. */
final class Told implements LevelListener {

    record Line(long tNanos, String topic, double amount) {}

    final List<Line> lines = new ArrayList<>();

    /** The readings that the cuts should come down to. */
    final List<Double> cutTo = new ArrayList<>();

    private void add(long tNanos, String topic, double amount) {
        lines.add(new Line(tNanos, topic, amount));
    }

    @Override
    public void overload(long tNanos, Condition condition) {
        add(tNanos, condition.code(), Double.NaN);
    }

    @Override
    public void flattening(long tNanos, double slope) {
        add(tNanos, "flattening", slope);
    }

    @Override
    public void cleared(long tNanos) {
        add(tNanos, "cleared", Double.NaN);
    }

    @Override
    public void weak(long tNanos, double snrDb) {
        add(tNanos, "weak", snrDb);
    }

    @Override
    public void drift(long tNanos, double dbPerMinute) {
        add(tNanos, "drift", dbPerMinute);
    }

    @Override
    public void settled(long tNanos, double dbPerMinute) {
        add(tNanos, "settled", dbPerMinute);
    }

    @Override
    public void suspected(long tNanos, Suspicion suspicion, double amount) {
        add(tNanos, "possible-" + suspicion.code(), amount);
    }

    @Override
    public void noLongerSuspected(long tNanos, Suspicion suspicion) {
        add(tNanos, "no-longer-possible", Double.NaN);
    }

    @Override
    public void widePeak(long tNanos, double times) {
        add(tNanos, "wide-peak", times);
    }

    @Override
    public void restMissing(long tNanos) {
        add(tNanos, "no-rest", Double.NaN);
    }

    @Override
    public void asked(long tNanos, CheckKind check, int move, double skirtHz, double imageDialHz) {
        add(tNanos, "ask", move);
    }

    @Override
    public void checked(long tNanos, CheckKind check, CheckFigures figures) {
        add(tNanos, check.code(), figures.figure());
    }

    @Override
    public void lawStep(long tNanos, double generatorDb, double level) {
        add(tNanos, "law-step", level);
    }

    @Override
    public void checkOver(long tNanos) {
        add(tNanos, "check-over", Double.NaN);
    }

    @Override
    public void checkDropped(long tNanos, double waitedSeconds) {
        add(tNanos, "check-dropped", waitedSeconds);
    }

    @Override
    public void cutGenerator(long tNanos, double factor, double toReading) {
        add(tNanos, "cut-generator", factor);
        cutTo.add(toReading);
    }

    @Override
    public void generatorChanged(long tNanos, double changeDb) {
        add(tNanos, "generator-changed", changeDb);
    }

    @Override
    public void generatorUnchanged(long tNanos) {
        add(tNanos, "generator-unchanged", Double.NaN);
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

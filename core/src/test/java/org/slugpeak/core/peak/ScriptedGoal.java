package org.slugpeak.core.peak;

import java.util.ArrayList;
import java.util.List;

/** A goal that sees what it is told to see, and notes what is asked of it. */
final class ScriptedGoal implements HuntGoal {

    Seen seen = Seen.NOTHING;
    boolean isPass = true;
    boolean isBeyond;
    boolean isBack;
    Stay stay = Stay.WAITS;
    long staysSince;
    final List<String> asked = new ArrayList<>();

    String last() {
        return asked.get(asked.size() - 1);
    }

    @Override
    public Seen look(long tNanos) {
        return seen;
    }

    @Override
    public void search(long tNanos) {
        asked.add("search");
    }

    @Override
    public boolean passes(long tNanos, boolean before) {
        asked.add(before ? "passes again" : "passes");
        return isPass;
    }

    @Override
    public void past(long tNanos) {
        asked.add("past");
    }

    @Override
    public void takeBack(long tNanos) {
        asked.add("takeBack");
    }

    @Override
    public boolean isBeyond(long tNanos, boolean held) {
        return isBeyond;
    }

    @Override
    public boolean isBack(long tNanos) {
        return isBack;
    }

    @Override
    public void returned(long tNanos) {
        asked.add("returned");
    }

    @Override
    public Stay stay(long tNanos, long sinceNanos) {
        asked.add("stay");
        staysSince = sinceNanos;
        return stay;
    }

    @Override
    public void held(long tNanos) {
        asked.add("held");
    }

    @Override
    public void gap() {
        asked.add("gap");
    }

    @Override
    public void interrupted() {
        asked.add("interrupted");
    }

    @Override
    public void jump(long tNanos, double before) {
        asked.add("jump from " + before);
    }

    @Override
    public void restart() {
        asked.add("restart");
    }

    @Override
    public double best() {
        return 0;
    }

    @Override
    public double bestSigma() {
        return 0;
    }

    @Override
    public long bestAtNanos() {
        return 0;
    }

    @Override
    public double belowBestDb() {
        return 0;
    }

    @Override
    public int trend() {
        return 0;
    }

    @Override
    public double smoothed() {
        return 0;
    }
}

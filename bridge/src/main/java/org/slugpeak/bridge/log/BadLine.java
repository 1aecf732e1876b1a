package org.slugpeak.bridge.log;

/** A line that is no record; the problem goes on from "the line". Immutable. */
sealed class BadLine extends Exception permits NewerVersion {

    private static final long serialVersionUID = 1L;

    private final String problem;

    BadLine(String problem) {
        super(problem, null, false, false);
        this.problem = problem;
    }

    static BadLine impossible(String what) {
        return new BadLine("has a field that cannot be: " + what);
    }

    String problem() {
        return problem;
    }
}

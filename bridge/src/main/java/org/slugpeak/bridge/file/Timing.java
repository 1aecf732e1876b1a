package org.slugpeak.bridge.file;

/** Gives lines without a time of their own a time. One thread at a time. */
interface Timing {

    /**
     * The time of the next line.
     *
     * @param arrivalNanos when the bytes of the line arrived
     * @return nanoseconds from the first line; never decreasing
     */
    long next(long arrivalNanos);

    /** Lines at an even rate. */
    static Timing even(double perSecond) {
        return new Timing() {
            private long count;

            @Override
            public long next(long arrivalNanos) {
                return Math.round(count++ * (1e9 / perSecond));
            }
        };
    }

    /** Lines as they arrive; those that come in one burst are taken 1 ms apart, so that their order is not lost. */
    static Timing arrival() {
        return new Timing() {
            private static final long BURST_NANOS = 1_000_000;

            private boolean begun;
            private long first;
            private long last;

            @Override
            public long next(long arrivalNanos) {
                if (!begun) {
                    begun = true;
                    first = arrivalNanos;
                    return 0;
                }
                last = Math.max(last + BURST_NANOS, arrivalNanos - first);
                return last;
            }
        };
    }
}

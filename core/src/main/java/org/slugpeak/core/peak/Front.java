package org.slugpeak.core.peak;

/**
 * Conditions readings for a {@link Seeker}: spikes out, blocks of about 20 ms, means of every length, noise. Everything
 * lives in arrays made once.
 */
final class Front {

    /** No adjuster moves a reading by this ratio (3 dB) within {@link #SUDDEN_SECONDS}. */
    private static final double JUMP = 1.41;

    private static final double SUDDEN_SECONDS = 0.06;
    /** On a slow meter it is a jump, too, where the reading stood before and stands again: a hand goes on. */
    private static final double STANDS = 5;
    /** A range change multiplies by a power of ten; within this ratio of one it is taken for such. */
    private static final double NEAR_DECADE = 1.12;

    final Pyramid pyramid = new Pyramid();
    final Noise noise = new Noise();
    final TimeBase time = new TimeBase();
    final Pace pace = new Pace();
    private final Despiker despiker = new Despiker();

    private boolean behind;
    private double lastGood;
    private long lastGoodNanos;
    private int inBlock;
    private double sum;

    /** Takes one reading. */
    void accept(long tNanos, double value, Seeker seeker) {
        if (time.accept(tNanos)) {
            interrupt(seeker);
        } else {
            keepPace(seeker);
        }
        long now = time.nanos();
        switch (despiker.offer(now, value, pace.intervalSeconds())) {
            case GOOD -> take(now, value, seeker);
            case WAIT -> {}
            case STEP -> takeStep(now, seeker);
        }
    }

    private void keepPace(Seeker seeker) {
        int before = pace.blockSize();
        if (pace.look(time.intervalSeconds())) {
            noise.rescale(Math.sqrt((double) before / pace.blockSize()));
            clearBlocks(seeker);
        }
    }

    private void takeStep(long now, Seeker seeker) {
        double after = despiker.value(despiker.held() - 1);
        if (isJump(after, Elapsed.seconds(lastGoodNanos, despiker.tNanos(0)))) {
            double before = lastGood;
            clearBlocks(seeker);
            noise.unsettle();
            seeker.jump(now, before);
        }
        for (int i = 0; i < despiker.held(); i++) {
            behind = i + 1 < despiker.held();
            take(despiker.tNanos(i), despiker.value(i), seeker);
        }
        despiker.release();
    }

    private boolean isJump(double after, double seconds) {
        double small = Math.min(Math.abs(after), Math.abs(lastGood));
        double large = Math.max(Math.abs(after), Math.abs(lastGood));
        boolean stands = STANDS * Math.abs(after - despiker.value(0)) <= Math.abs(despiker.value(0) - lastGood);
        if (seconds <= SUDDEN_SECONDS || stands) {
            return large > JUMP * small || (after > 0) != (lastGood > 0);
        }
        return isDecade(small, large);
    }

    private static boolean isDecade(double small, double large) {
        double decade = Math.pow(10, Math.rint(Math.log10(large / small)));
        return decade > 1 && decade * small <= NEAR_DECADE * large && large <= NEAR_DECADE * decade * small;
    }

    private void take(long tNanos, double value, Seeker seeker) {
        lastGood = value;
        lastGoodNanos = tNanos;
        sum += value;
        inBlock++;
        if (inBlock >= pace.blockSize()) {
            pyramid.add(tNanos, sum / inBlock);
            noise.add(pyramid, pace.blockSeconds());
            inBlock = 0;
            sum = 0;
            seeker.block(tNanos);
        }
    }

    /** Whether the newest block has been set aside and others follow at once: nobody sees what is made of it. */
    boolean isBehind() {
        return behind;
    }

    /** The octave of the longest window that is filled and not longer than this. */
    int octave(double seconds) {
        int octave = 0;
        while (octave + 1 < Pyramid.OCTAVES
                && pyramid.has(octave + 1, 1)
                && pace.blockSeconds() * Pyramid.length(octave + 1) <= seconds) {
            octave++;
        }
        return octave;
    }

    /** What comes next need not follow on what came before. */
    void gap(Seeker seeker) {
        time.gap();
        interrupt(seeker);
    }

    private void interrupt(Seeker seeker) {
        despiker.gap();
        clearBlocks(seeker);
        seeker.interrupted();
    }

    private void clearBlocks(Seeker seeker) {
        pyramid.clear();
        inBlock = 0;
        sum = 0;
        seeker.gap();
    }
}

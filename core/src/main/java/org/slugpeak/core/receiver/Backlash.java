package org.slugpeak.core.receiver;

/** Play between what is turned and what follows. One thread at a time. */
public final class Backlash {

    private final double play;
    private double driver;
    private double follower;

    /**
     * Both at the same place, the play half taken up.
     *
     * @param play how far, in turns or another unit of travel, the driver moves after a reversal before anything
     *     follows; 0 or more
     * @param position where both stand, in the unit of the play
     */
    public Backlash(double play, double position) {
        this.play = play;
        this.driver = position;
        this.follower = position;
    }

    /**
     * Moves the driver.
     *
     * @param by in the unit of the play
     */
    public void move(double by) {
        driver += by;
        follower = Math.min(driver + play / 2, Math.max(driver - play / 2, follower));
    }

    /**
     * Where the follower stands.
     *
     * @return in the unit of the play
     */
    public double position() {
        return follower;
    }
}

package org.slugpeak.cli.run;

/** A program that takes its signals over when the virtual machine is ending already, as one does that was told to stop in its first moment. */
final class ToldTooEarly {

    private ToldTooEarly() {}

    /**
     * Ends at once.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Runtime.getRuntime().addShutdownHook(new Thread(Interruption::takeOver));
        System.exit(0);
    }
}

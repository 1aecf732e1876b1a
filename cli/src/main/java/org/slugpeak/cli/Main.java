package org.slugpeak.cli;

/** Where the program starts. */
public final class Main {

    private Main() {}

    /**
     * Runs a command.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        System.out.println("slugpeak");
    }
}

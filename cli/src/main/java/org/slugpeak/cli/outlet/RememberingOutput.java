package org.slugpeak.cli.outlet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.function.Consumer;

/** Remembers that writing failed, and says so once: those who print text never hear of it. Any thread may use it. */
final class RememberingOutput extends OutputStream {

    private final OutputStream out;
    private final Consumer<IOException> atFirstFailure;
    private boolean broken;

    RememberingOutput(OutputStream out, Consumer<IOException> atFirstFailure) {
        this.out = out;
        this.atFirstFailure = atFirstFailure;
    }

    synchronized boolean isBroken() {
        return broken;
    }

    @Override
    public void write(int each) throws IOException {
        write(new byte[] {(byte) each}, 0, 1);
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int count) throws IOException {
        try {
            out.write(bytes, from, count);
        } catch (IOException e) {
            if (!broken) {
                broken = true;
                atFirstFailure.accept(e);
            }
            throw e;
        }
    }

    /** Standard output stays open as long as the process. */
    @Override
    public void close() {}
}

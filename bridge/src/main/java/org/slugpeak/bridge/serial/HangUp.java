package org.slugpeak.bridge.serial;

import com.sun.jna.Function;
import com.sun.jna.Memory;
import com.sun.jna.Platform;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the process does on SIGHUP. The serial library, when it is loaded, makes the whole process deaf to it, so that a session
 * would outlive its terminal and keep the port; and the virtual machine never takes back a signal that it finds ignored. So what
 * was there before is put back (sigaction, POSIX.1-2017): the handler, or that it is ignored, as under nohup. One thread at a time.
 */
final class HangUp {

    /** The numbers are the same on all systems that have the signal. */
    private static final int SIGHUP = 1;

    /** The structure has 152 bytes on Linux, and less elsewhere. */
    private static final int LARGEST_ACTION = 256;

    private final Optional<Memory> before;

    private HangUp(Optional<Memory> before) {
        this.before = before;
    }

    /** Remembers it; the native part that this needs is kept in a folder that is the user's own. */
    static HangUp remembered(Path folder) {
        if (Platform.isWindows()) {
            return new HangUp(Optional.empty());
        }
        System.setProperty("jna.tmpdir", folder.toString());
        Memory action = new Memory(LARGEST_ACTION);
        sigaction(null, action);
        return new HangUp(Optional.of(action));
    }

    /** Puts back what was remembered. */
    void putBack() {
        before.ifPresent(action -> sigaction(action, null));
    }

    private static void sigaction(@Nullable Memory action, @Nullable Memory old) {
        Function.getFunction("c", "sigaction").invokeInt(new Object[] {SIGHUP, action, old});
    }
}

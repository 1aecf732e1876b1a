package org.slugpeak.cli.run;

import java.util.Optional;
import java.util.function.Consumer;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.Showing;
import org.slugpeak.core.session.EndReason;

/** Sees to the keys that were pressed since it was asked last; what ends a session ends every kind of it alike. */
public final class KeyLoop {

    private KeyLoop() {}

    /**
     * Serves every key that waits. The session's thread only.
     *
     * @param showing where the keys come from
     * @param control is told to end
     * @param other gets every key that does not end the session
     */
    public static void serve(Showing showing, SessionControl control, Consumer<KeyAction> other) {
        for (Optional<KeyAction> key = showing.keys().poll();
                key.isPresent();
                key = showing.keys().poll()) {
            switch (key.get()) {
                case KEYS -> showing.tellKeys();
                case PAGE -> showing.tellAddress();
                case QUIT -> control.quit(EndReason.Known.QUIT);
                case INTERRUPT -> control.quit(EndReason.Known.INTERRUPTED);
                case HANG_UP -> control.quit(EndReason.Known.TERMINAL_CLOSED);
                default -> other.accept(key.get());
            }
        }
    }
}

package org.slugpeak.cli.page;

import java.util.Optional;
import java.util.Set;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.Keys;

/** What the buttons may ask for, and where it goes. Any thread may use it. */
final class PageKeys implements PageServer.Wishes {

    private final Set<KeyAction> allowed;
    private volatile Optional<Keys> keys = Optional.empty();

    /** Until they lead somewhere nothing is taken. */
    PageKeys(Set<KeyAction> allowed) {
        this.allowed = Set.copyOf(allowed);
    }

    Set<KeyAction> allowed() {
        return allowed;
    }

    /** From now on they are keys like those of the terminal. */
    void leadTo(Keys ofSession) {
        keys = Optional.of(ofSession);
    }

    @Override
    public boolean take(String word) {
        Optional<KeyAction> action = PageWords.wish(word).filter(allowed::contains);
        Optional<Keys> target = keys;
        if (action.isEmpty() || target.isEmpty()) {
            return false;
        }
        target.get().put(action.get());
        return true;
    }
}

package org.slugpeak.cli.run;

import java.util.Set;
import org.slugpeak.cli.cue.Cue;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.Showing;
import org.slugpeak.core.session.SessionRecord;

/** What the user hears, the keys that change it, and the word for it in the corner of the screen. One thread. */
public final class CueOutput implements SessionOutput {

    /** The keys that change what is heard. */
    public static final Set<KeyAction> KEYS = Set.of(KeyAction.SOUND, KeyAction.LOUDER, KeyAction.SOFTER);

    private final Cue cue;
    private final Showing showing;

    /**
     * Lets a session be heard.
     *
     * @param cue closed with this
     * @param showing shows the state of the sound
     */
    public CueOutput(Cue cue, Showing showing) {
        this.cue = cue;
        this.showing = showing;
    }

    /**
     * Has its keys seen to, where there is anything to hear.
     *
     * @param shown brings the keys
     */
    public void bind(ShowingOutput shown) {
        shown.onKey(KeyAction.SOUND, cue::toggle);
        shown.onKey(KeyAction.LOUDER, cue::louder);
        shown.onKey(KeyAction.SOFTER, cue::softer);
    }

    /**
     * Is silent while something is spoken.
     *
     * @param speaks whether it is being spoken now
     */
    public void giveWay(boolean speaks) {
        cue.giveWay(speaks);
    }

    @Override
    public void take(SessionRecord record) {
        cue.take(record);
    }

    @Override
    public void serve(SessionControl control) {
        showing.status(cue.status());
    }

    @Override
    public boolean isWhole() {
        return cue.isWhole();
    }

    @Override
    public void close() {
        cue.close();
    }
}

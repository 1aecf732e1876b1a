package org.slugpeak.bridge.sound;

import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.signal.ClippingCause;

/** Says what clips, when it begins to. One thread at a time. */
final class ClippingNews {

    private ClippingCause said = ClippingCause.NONE;

    /** Whether it was not said yet that something does. */
    boolean isNew() {
        return said == ClippingCause.NONE;
    }

    void see(ClippingCause cause, SourceListener listener) {
        if (cause != said && cause != ClippingCause.NONE) {
            listener.remark(at -> new Sound.Clips(at, cause));
        }
        said = cause;
    }
}

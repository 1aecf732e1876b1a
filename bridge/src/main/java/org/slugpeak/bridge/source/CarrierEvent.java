package org.slugpeak.bridge.source;

import org.slugpeak.core.session.LinkDetail;

/** Something that happened on a {@link Carrier}. Immutable but for the bytes, which the receiver owns. */
public sealed interface CarrierEvent {

    /**
     * When it happened.
     *
     * @return nanoseconds on the ticker's axis
     */
    long tNanos();

    /**
     * One case for each kind.
     *
     * @param matcher what to do
     */
    void match(Matcher matcher);

    /** What to do for each kind of event. */
    interface Matcher {

        /**
         * The port was opened, for the first time or again.
         *
         * @param event when
         */
        void opened(Opened event);

        /**
         * Bytes came.
         *
         * @param event which
         */
        void bytes(Bytes event);

        /**
         * The instrument has gone.
         *
         * @param event why
         */
        void lost(Lost event);
    }

    /**
     * The port was opened, for the first time or again.
     *
     * @param tNanos when
     */
    record Opened(long tNanos) implements CarrierEvent {
        @Override
        public void match(Matcher matcher) {
            matcher.opened(this);
        }
    }

    /**
     * Bytes came.
     *
     * @param tNanos when the last of them was there
     * @param bytes at least one; the receiver owns them
     */
    @SuppressWarnings("ArrayRecordComponent") // handed over, never compared
    record Bytes(long tNanos, byte[] bytes) implements CarrierEvent {
        @Override
        public void match(Matcher matcher) {
            matcher.bytes(this);
        }
    }

    /**
     * The instrument has gone; the carrier tries to have it back.
     *
     * @param tNanos when it was noticed
     * @param detail what is known of it
     */
    record Lost(long tNanos, LinkDetail detail) implements CarrierEvent {
        @Override
        public void match(Matcher matcher) {
            matcher.lost(this);
        }
    }
}

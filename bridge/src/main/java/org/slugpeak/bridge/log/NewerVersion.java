package org.slugpeak.bridge.log;

/** A session record of a version that is not known here. Immutable. */
final class NewerVersion extends BadLine {

    private static final long serialVersionUID = 1L;

    NewerVersion(String message) {
        super(message);
    }
}

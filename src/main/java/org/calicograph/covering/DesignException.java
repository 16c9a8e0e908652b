package org.calicograph.covering;

/** A design that can't be sewn as it stands; the message names the thing, the value and the repair. */
public final class DesignException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** With what is wrong, the value, and the repair. */
    public DesignException(String message) {
        super(message);
    }
}

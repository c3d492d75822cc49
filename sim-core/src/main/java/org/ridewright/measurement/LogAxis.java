package org.ridewright.measurement;

import java.util.Locale;

/** An axis of the logger, as its maker marked it. */
public enum LogAxis {
    X,
    Y,
    Z;

    /** Small letter. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}

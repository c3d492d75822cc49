package org.ridewright.measurement;

import java.util.Locale;

/** An axis of the logger, as its maker marked it. */
public enum LogAxis {
    X(0),
    Y(1),
    Z(2);

    private final int place;

    LogAxis(int place) {
        this.place = place;
    }

    /** Place in a vector, from 0. */
    int place() {
        return place;
    }

    /** Small letter. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}

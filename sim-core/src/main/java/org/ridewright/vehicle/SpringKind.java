package org.ridewright.vehicle;

/** What a spring is, for reports and for the formula of its rate; the law is the same for all. */
public enum SpringKind {
    FULL_ELLIPTIC("full-elliptic leaf"),
    HALF_ELLIPTIC("half-elliptic leaf"),
    QUARTER_ELLIPTIC("quarter-elliptic leaf"),
    CANTILEVER("cantilever leaf"),
    TRANSVERSE("transverse leaf"),
    COIL("coil"),
    TORSION_BAR("torsion bar"),
    AIR("air"),
    RUBBER("rubber");

    private final String word;

    SpringKind(String word) {
        this.word = word;
    }

    /** The words as written in files. */
    public String word() {
        return word;
    }

    /** Whether the spring is a pack of leaves. */
    public boolean isLeaf() {
        return ordinal() <= TRANSVERSE.ordinal();
    }
}

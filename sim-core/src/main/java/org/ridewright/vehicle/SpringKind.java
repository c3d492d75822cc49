package org.ridewright.vehicle;

/** What a spring is, for reports and for the formula of its rate; the law is the same for all. */
public enum SpringKind {
    FULL_ELLIPTIC("full-elliptic leaf", true),
    HALF_ELLIPTIC("half-elliptic leaf", true),
    QUARTER_ELLIPTIC("quarter-elliptic leaf", true),
    CANTILEVER("cantilever leaf", true),
    TRANSVERSE("transverse leaf", true),
    COIL("coil", false),
    TORSION_BAR("torsion bar", false),
    AIR("air", false),
    RUBBER("rubber", false);

    private final String word;
    private final boolean leaf;

    SpringKind(String word, boolean leaf) {
        this.word = word;
        this.leaf = leaf;
    }

    /** The words as written in files. */
    public String word() {
        return word;
    }

    /** Whether the spring is a pack of leaves. */
    public boolean isLeaf() {
        return leaf;
    }
}

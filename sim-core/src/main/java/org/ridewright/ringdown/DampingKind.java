package org.ridewright.ringdown;

/** What takes the energy out, as far as a record tells: which of the two 90 % intervals leave zero out. */
public enum DampingKind {
    /** Dry friction: the same loss each cycle, a straight envelope. */
    DRY("dry friction", "straight"),
    /** Viscous damping: the same share each cycle, an exponential envelope. */
    VISCOUS("viscous damping", "exponential"),
    /** Both can be told. */
    MIXED("dry friction and viscous damping", "mixed"),
    /** It decays, but either alone would do. */
    UNCLEAR("cannot tell", "cannot tell");

    private final String words;
    private final String envelope;

    DampingKind(String words, String envelope) {
        this.words = words;
        this.envelope = envelope;
    }

    /** In running text. */
    public String words() {
        return words;
    }

    /** How the envelope runs. */
    public String envelope() {
        return envelope;
    }

    static DampingKind of(Estimate friction, Estimate dampingRatio) {
        if (friction.isAboveZero()) {
            return dampingRatio.isAboveZero() ? MIXED : DRY;
        }
        return dampingRatio.isAboveZero() ? VISCOUS : UNCLEAR;
    }
}

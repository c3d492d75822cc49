package org.ridewright.modal;

/** The two conditions of a dry spring, between which every motion lies. */
public enum Condition {
    /** Friction holds nothing: the rate is {@code f_e'}. */
    SLIDING,
    /** Nothing slides: the rate is {@code f_e' + k_p}. */
    LOCKED;

    /** The word for reports. */
    public String word() {
        return this == SLIDING ? "sliding" : "locked";
    }
}

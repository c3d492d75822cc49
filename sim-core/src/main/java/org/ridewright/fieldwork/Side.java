package org.ridewright.fieldwork;

/** A side of the vehicle, as the driver looks ahead. */
public enum Side {
    LEFT("left", 1),
    RIGHT("right", -1);

    private final String word;
    private final int sign;

    Side(String word, int sign) {
        this.word = word;
        this.sign = sign;
    }

    /** The word as written in files. */
    public String word() {
        return word;
    }

    /** +1 to the left, −1 to the right. */
    public int sign() {
        return sign;
    }
}

package org.ridewright.sheet;

/** Dimension letters: one for each kind of dimension, with a number where there are several of the kind. */
enum Letters {
    WHEELBASE("A"),
    TRACK("B"),
    WHEEL("C"),
    SPRINGS_APART("D"),
    MOUNTS("E"),
    CLEARANCE("F"),
    FREE_CAMBER("G"),
    LOADED_CAMBER("H"),
    SPRING_LENGTH("J"),
    SEAT_BEHIND("K"),
    SEAT_HEIGHT("L"),
    SEAT_ASIDE("M"),
    FEET_BEHIND("N"),
    FEET_HEIGHT("P"),
    LENGTH("Q"),
    WIDTH("R"),
    HEIGHT("S"),
    HITCH_AHEAD("T"),
    HITCH_HEIGHT("U"),
    FOOTPRINT("V"),
    LEAVES("W");

    private final String letter;

    Letters(String letter) {
        this.letter = letter;
    }

    /** The letter alone, or with the number of the thing among several, from 0. */
    String of(int index, int count) {
        return count > 1 ? letter + (index + 1) : letter;
    }

    String letter() {
        return letter;
    }
}

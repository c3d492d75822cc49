package org.ridewright.dynamics;

import java.util.Optional;

/** A vehicle that cannot stand or ride as described, or a run that had to be stopped; the message is for the user. */
public final class RideException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String element;
    private final boolean ofSprings;

    public RideException(String message) {
        this(message, "", false);
    }

    private RideException(String message, String element, boolean ofSprings) {
        super(message);
        this.element = element;
        this.ofSprings = ofSprings;
    }

    /** What a force element brings about, other than by its rate. */
    static RideException at(String element, String message) {
        return new RideException(message, element, false);
    }

    /** What a spring brings about that is too soft for its load, or for the rest of its law. */
    static RideException tooSoft(String element, String message) {
        return new RideException(message, element, true);
    }

    /** What some spring brings about that is too soft, or a load too heavy. */
    static RideException tooSoft(String message) {
        return new RideException(message, "", true);
    }

    /** Name of the force element that it most likely lies with. */
    public Optional<String> element() {
        return Optional.of(element).filter(name -> !name.isEmpty());
    }

    /** Whether it most likely lies with the rate of a spring, that of {@link #element} or of another. */
    public boolean ofSprings() {
        return ofSprings;
    }
}

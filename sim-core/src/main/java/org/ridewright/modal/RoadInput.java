package org.ridewright.modal;

import java.util.OptionalInt;
import org.hipparchus.complex.Complex;
import org.ridewright.dynamics.WheelPlace;

/**
 * Which wheels a sinusoidal road moves, and when: wheel at x by {@code e^{iω(t − (x₁ − x)/v)}}, x₁ that of the first axle.
 *
 * @param tracks wheels on the centre line belong to both
 * @param axle index of the only axle that moves; empty: all
 * @param speed v (m/s), > 0; infinite: all axles at once
 */
public record RoadInput(Tracks tracks, OptionalInt axle, double speed) {
    /** Sides of the road that are wavy. */
    public enum Tracks {
        BOTH("both tracks"),
        LEFT("left track"),
        RIGHT("right track");

        private final String words;

        Tracks(String words) {
            this.words = words;
        }

        /** Words for reports. */
        public String words() {
            return words;
        }
    }

    public RoadInput {
        if (!(speed > 0)) {
            throw new IllegalArgumentException("speed must be > 0 m/s, got " + speed);
        }
    }

    /** Both tracks, all axles. */
    public static RoadInput both(double speed) {
        return new RoadInput(Tracks.BOTH, OptionalInt.empty(), speed);
    }

    /** One track, all axles. */
    public static RoadInput side(Tracks tracks, double speed) {
        return new RoadInput(tracks, OptionalInt.empty(), speed);
    }

    /** Both wheels of one axle, the others on level ground. */
    public static RoadInput axle(int axle) {
        return new RoadInput(Tracks.BOTH, OptionalInt.of(axle), Double.POSITIVE_INFINITY);
    }

    /** Height of the ground under a wheel, over the amplitude of the road. */
    Complex under(WheelPlace wheel, double firstX, double omega) {
        boolean side = tracks == Tracks.BOTH || wheel.y() == 0 || (wheel.y() > 0) == (tracks == Tracks.LEFT);
        boolean moved = axle.isEmpty() || axle.getAsInt() == wheel.axle();
        if (!side || !moved) {
            return Complex.ZERO;
        }
        double phase = Double.isInfinite(speed) ? 0 : -omega * (firstX - wheel.x()) / speed;
        return new Complex(Math.cos(phase), Math.sin(phase));
    }
}

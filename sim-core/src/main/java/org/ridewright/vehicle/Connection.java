package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/** A force element that joins more than one axle. */
public sealed interface Connection {
    /** Unique in the vehicle. */
    String name();

    /**
     * An undercarriage, reach or frame that has to twist when one wheel rises.
     *
     * @param rate per angle of roll between the two axles (N·m/rad), > 0
     * @param damping a coefficient (N·m·s/rad), or none
     * @param friction constant part as a torque (N·m); its share of load is nil
     */
    record UndercarriageTwist(
            String name, String frontAxle, String rearAxle, Measure rate, Damping damping, Friction friction)
            implements Connection {}

    /**
     * A spring along the side from one axle towards the other. Clamped to the body in its middle it has two tips, each a spring
     * of its own; pivoted, one, at the pivot.
     *
     * @param tips one or two
     */
    record SideSpring(String name, String frontAxle, String rearAxle, Attachment attachment, List<Tip> tips)
            implements Connection {
        public SideSpring {
            tips = List.copyOf(tips);
        }
    }

    /** Where a side spring bears between its axles, and its law there. */
    record Tip(
            Measure behindFrontAxle,
            SpringKind kind,
            Elasticity elasticity,
            Damping damping,
            Friction friction,
            List<GappedStage> stages) {
        public Tip {
            stages = List.copyOf(stages);
        }
    }

    /**
     * A spring that acts on a weighted sum of travels.
     *
     * @param terms of the sum
     */
    record Interconnection(
            String name,
            List<Term> terms,
            Elasticity elasticity,
            Damping damping,
            Friction friction,
            List<GappedStage> stages)
            implements Connection {
        public Interconnection {
            terms = List.copyOf(terms);
            stages = List.copyOf(stages);
        }
    }

    /** One travel with its weight. */
    sealed interface Term {
        /** Factor of the travel in the sum. */
        double weight();

        /** Travel of a corner: axle or wheel against the body above it, positive in compression. */
        record Corner(double weight, String axle, Attachment.Position side, Optional<Measure> apart) implements Term {}

        /** Rise of the axle or wheel alone. */
        record Unsprung(double weight, String axle, Attachment.Position side, Optional<Measure> apart)
                implements Term {}

        /** Rise of a point of the body alone. */
        record BodyPoint(double weight, Place place) implements Term {}
    }
}

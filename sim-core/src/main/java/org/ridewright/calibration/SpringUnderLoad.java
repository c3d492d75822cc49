package org.ridewright.calibration;

import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.SpringLaws;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.Vehicle;

/**
 * One spring pressed by itself: loading it needs {@code f_e + S}, unloading leaves {@code f_e − S}.
 *
 * @param law without helpers and stops
 */
record SpringUnderLoad(ForceLaw law) {
    private static final double FURTHEST = 2;

    static SpringUnderLoad of(Vehicle vehicle, String axle, String spring) {
        Spring found = BodyMarks.axle(vehicle, axle).springs().stream()
                .filter(s -> s.name().equals(spring))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no spring named '" + spring + "'"));
        return of(found);
    }

    static SpringUnderLoad of(Spring spring) {
        ForceLaw elastic = SpringLaws.elastic(spring.kind(), spring.elasticity());
        return new SpringUnderLoad(SpringLaws.withFriction(elastic, spring.elasticity(), spring.friction()));
    }

    /**
     * Compression (m) under a load (N).
     *
     * @param way +1 loading, −1 unloading, 0 without friction
     */
    double compression(double load, int way) {
        double low = -FURTHEST;
        double high = FURTHEST;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (force(middle, way) < load) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private double force(double compression, int way) {
        return law.elasticForce(compression) + way * law.frictionLimit(compression);
    }

    /** Indices of the elements of an axle's spring in the equations. */
    static List<Integer> elements(VehicleModel model, Axle axle, String spring) {
        String name = Element.nameOf(axle.name(), spring);
        List<Element> all = model.equations().elements();
        return IntStream.range(0, all.size())
                .filter(e -> all.get(e).kind() == Element.Kind.SPRING
                        && all.get(e).name().startsWith(name))
                .boxed()
                .toList();
    }
}

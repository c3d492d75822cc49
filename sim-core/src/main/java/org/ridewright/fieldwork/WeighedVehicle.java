package org.ridewright.fieldwork;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.fieldwork.Weights.Scale;
import org.ridewright.fieldwork.Weights.Under;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.Vehicle;

/** Mass of the whole vehicle and the place of its centre, with what was aboard, from scales: {@code x = Σ m_i x_i/Σ m_i}. */
final class WeighedVehicle {
    private WeighedVehicle() {}

    /** Mass (kg); empty if something was not weighed on which the vehicle stood. */
    static Optional<Measure> total(Weights weights, Vehicle vehicle) {
        return loads(weights, vehicle)
                .map(loads -> Propagation.sum(
                        "sum of the scales", loads.stream().map(Load::mass).toList()));
    }

    /** Distance of the centre of mass behind the front axle (m); empty as above, or if there is only one axle and no hitch. */
    static Optional<Measure> behindFrontAxle(Weights weights, Vehicle vehicle) {
        return loads(weights, vehicle).filter(loads -> loads.size() > 1).map(loads -> {
            List<Measure> readings = new ArrayList<>();
            loads.forEach(load -> {
                readings.add(load.mass());
                readings.add(load.behind());
            });
            return Propagation.of(
                    QuantityKind.LENGTH,
                    "moments of the scales",
                    WeighedVehicle::centre,
                    readings.toArray(Measure[]::new));
        });
    }

    /** Distance of the centre of mass left of the centre line (m); empty unless every wheel was weighed by itself. */
    static Optional<Measure> leftOfCentre(Weights weights, Vehicle vehicle) {
        List<Measure> readings = new ArrayList<>();
        for (Axle axle : vehicle.axles()) {
            for (Side side : Side.values()) {
                Optional<Measure> shown = shown(weights, new Under.OneWheel(axle.name(), side));
                if (shown.isEmpty() || axle.track().isEmpty()) {
                    return Optional.empty();
                }
                readings.add(shown.get());
                readings.add(across(axle.track().get(), side));
            }
        }
        boolean hitched = weights.scales().stream().anyMatch(scale -> scale.under() instanceof Under.AtHitch);
        return hitched
                ? Optional.empty()
                : Optional.of(Propagation.of(
                        QuantityKind.LENGTH,
                        "moments of the scales",
                        WeighedVehicle::centre,
                        readings.toArray(Measure[]::new)));
    }

    private record Load(Measure mass, Measure behind) {}

    private static Optional<List<Load>> loads(Weights weights, Vehicle vehicle) {
        List<Load> loads = new ArrayList<>();
        for (Axle axle : vehicle.axles()) {
            Optional<Measure> load = weights.axleLoad(axle);
            if (load.isEmpty()) {
                return Optional.empty();
            }
            loads.add(new Load(load.get(), axle.behindFrontAxle()));
        }
        for (Hitch hitch : vehicle.hitches()) {
            Optional<Measure> load = shown(weights, new Under.AtHitch(hitch.name()));
            if (load.isEmpty()) {
                return Optional.empty();
            }
            loads.add(new Load(load.get(), hitch.place().behindFrontAxle()));
        }
        return Optional.of(loads);
    }

    private static Optional<Measure> shown(Weights weights, Under under) {
        return weights.scales().stream()
                .filter(scale -> scale.under().equals(under))
                .map(Scale::shown)
                .findFirst();
    }

    private static Measure across(Measure track, Side side) {
        return new Measure(
                track.kind(),
                side.sign() * track.value() / 2,
                track.tolerance() / 2,
                track.provenance(),
                track.written());
    }

    /** Of masses and their places, in turn. */
    private static double centre(double[] x) {
        double mass = 0;
        double moment = 0;
        for (int i = 0; i < x.length; i += 2) {
            mass += x[i];
            moment += x[i] * x[i + 1];
        }
        return moment / mass;
    }
}

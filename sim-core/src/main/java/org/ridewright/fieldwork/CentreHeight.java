package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Vehicle;

/**
 * Height of the centre of mass of the whole vehicle, with what was aboard, from a lifted axle.
 *
 * <p>Wheels turn freely, so each scale bears straight below its wheel centre. Level, the axle that stays down (radius r_o) bears m_o of m, and the centre
 * of mass lies {@code b = L (1 − m_o/m)} from it along the line of the axles and {@code z − r_o} above its wheel centre. Tilted by θ about that
 * wheel centre, the centre of mass stands {@code b cos θ − (z − r_o) sin θ} from it, the lifted wheel centre (radius r_l)
 * {@code L cos θ − (r_l − r_o) sin θ}. Moments about the wheel centre that stays down, with m_o′ on its scale:
 *
 * <pre>
 *     z = r_o m_o′/m + r_l (1 − m_o′/m) + L (m_o′ − m_o)/(m tan θ)
 *     h = L sin θ + (r_l − r_o)(cos θ − 1)
 * </pre>
 *
 * <p>Source: derived here; for equal wheels it is the handbook's {@code r + L Δm/(m tan θ)} (from memory).
 */
final class CentreHeight {
    private CentreHeight() {}

    /** Greatest rise over the distance of the axles. */
    static final double STEEPEST = 0.9;

    /** The height (m); empty if the weights that it needs were not taken, or the vehicle has not two axles. */
    static Optional<Measure> of(LiftedAxle fact, Vehicle vehicle, List<Weights> weights) {
        if (vehicle.axles().size() != 2 || vehicle.axle(fact.lifted()).isEmpty()) {
            return Optional.empty();
        }
        Axle lifted = vehicle.axle(fact.lifted()).get();
        Axle other = vehicle.axles().get(vehicle.axles().indexOf(lifted) == 0 ? 1 : 0);
        Optional<Measure> level = level(fact, other, weights);
        Optional<Measure> total = total(fact, vehicle, weights);
        if (level.isEmpty() || total.isEmpty()) {
            return Optional.empty();
        }
        Measure distance = vehicle.axles().get(1).behindFrontAxle();
        return Optional.of(Propagation.of(
                QuantityKind.LENGTH,
                "weights under the " + other.title() + ", level and with the other lifted",
                x -> height(x[0], x[1], x[2], x[3], x[4], x[5], x[6]),
                distance,
                fact.by(),
                level.get(),
                fact.raised(),
                total.get(),
                half(other.wheel().diameter()),
                half(lifted.wheel().diameter())));
    }

    /** The weight under the axle that stays down, before. */
    static Optional<Measure> level(LiftedAxle fact, Axle other, List<Weights> weights) {
        return fact.level()
                .or(() -> same(fact, weights)
                        .flatMap(w -> w.axleLoad(other).stream())
                        .findFirst());
    }

    /** The weight of all. */
    static Optional<Measure> total(LiftedAxle fact, Vehicle vehicle, List<Weights> weights) {
        return fact.total()
                .or(() -> same(fact, weights)
                        .flatMap(w -> WeighedVehicle.total(w, vehicle).stream())
                        .findFirst());
    }

    /** Weights of the same load; what is kept back may not speak through another fact. */
    private static Stream<Weights> same(LiftedAxle fact, List<Weights> weights) {
        return weights.stream().filter(w -> w.load().equals(fact.load()) && (fact.keepBack() || !w.keepBack()));
    }

    /** {@code z} of the class's description (m). */
    static double height(
            double distance, double rise, double level, double raised, double total, double other, double lifted) {
        double tangent = Math.tan(tilt(distance, rise, lifted - other));
        return other * raised / total + lifted * (1 - raised / total) + distance * (raised - level) / (total * tangent);
    }

    /** θ of {@code h = L sin θ + Δr (cos θ − 1)}: with {@code t = tan θ/2}, {@code (h + 2Δr) t² − 2 L t + h = 0} (rad). */
    static double tilt(double distance, double rise, double radii) {
        double t = rise / (distance + Math.sqrt(distance * distance - rise * (rise + 2 * radii)));
        return 2 * Math.atan(t);
    }

    private static Measure half(Measure diameter) {
        return new Measure(
                diameter.kind(),
                diameter.value() / 2,
                diameter.tolerance() / 2,
                diameter.provenance(),
                diameter.written());
    }
}

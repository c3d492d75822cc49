package org.ridewright.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.HarmonicBalance;
import org.ridewright.modal.HarmonicBalance.Steady;
import org.ridewright.modal.RoadInput;
import org.ridewright.ride.Fleet;
import org.ridewright.vehicle.Vehicle;

/**
 * Coulomb friction over a moving base by harmonic balance: a mass on a spring with friction F, on a wheel so stiff that it follows the road
 * {@code Y cos ωt}. Its motion against the road is that of problem 7 with {@code F₀ = m ω² Y}. Harmonic balance of rigid friction is the
 * equivalent damper,
 *
 * <pre>
 *   X k/F₀ = √(1 − (4F/(πF₀))²)/|1 − r²|
 * </pre>
 *
 * <p>which the method must give but for what a locked rate of 10⁵ k leaves of rigid friction; the exact amplitude of Den Hartog tells how good an approximation it is.
 */
final class HarmonicBalances implements ReferenceProblem {
    private static final double MASS = 400;
    private static final double RATE = 40e3;
    private static final double FRICTION = 100;
    private static final Source FORMULA = DenHartog.PAPER;
    private static final Source EQUIVALENT =
            Source.closedForm("equivalent damper of Coulomb friction (Rao, from memory)");

    /** Greatest departure, at each r, that is told of beside Den Hartog. */
    private record Departure(double r, double friction, double share) {}

    private final List<Departure> departures = new ArrayList<>();

    @Override
    public String title() {
        return "Harmonic balance of dry friction";
    }

    @Override
    public String statement() {
        return "400 kg on 40 N/mm with rigid friction of 100 N above a wheel that follows the road, as assembled from its description; "
                + "`F₀ = m ω² Y`. Rows of problem 7 without stops.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        departures.clear();
        Vehicle vehicle = Fleet.described("""
                vehicle: mass on a dry spring
                layout: quarter
                body: {mass: %s kg}
                axles:
                  - name: wheel
                    behind front axle: 0 m
                    unsprung mass: 1 kg
                    wheels: {diameter: 0.6 m, tyre: iron, path: disc, contact rate: 100000000 N/mm, contact damping: 0 N s/m}
                    springs: [{name: spring, kind: coil, rate: %s N/m, friction: {constant: %s N, locked rate: rigid}}]
                load cases: [{name: empty, aboard: []}]
                """.formatted(MASS, RATE, FRICTION));
        VehicleModel model = VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
        double natural = Math.sqrt(RATE / MASS);
        for (DenHartog row : DenHartog.withoutStops()) {
            double omega = row.r() * natural;
            double force = FRICTION / row.friction();
            double road = force / (MASS * omega * omega);
            Steady steady = new HarmonicBalance(model, RoadInput.both(1), road)
                    .at(new double[] {omega / (2 * Math.PI)})
                    .get(0);
            double relative =
                    steady.coordinates()[0].subtract(steady.coordinates()[1]).norm() * road * RATE / force;
            double share = 4 * row.friction() / Math.PI;
            if (share < 1) {
                double damper = Math.sqrt(1 - share * share) / Math.abs(1 - row.r() * row.r());
                rows.relative(EQUIVALENT, row.name(), "1", damper, relative, 1e-2);
                departures.add(new Departure(row.r(), row.friction(), relative / row.closed() - 1));
            }
        }
        rows.absolute(
                FORMULA,
                "greatest departure from Den Hartog's amplitude, F/F₀ ≤ 0.3",
                "1",
                0,
                departures.stream()
                        .filter(d -> d.friction() <= 0.3)
                        .mapToDouble(d -> Math.abs(d.share()))
                        .max()
                        .orElseThrow(),
                0.1);
        return rows.list();
    }

    @Override
    public String remarks() {
        double worst =
                departures.stream().mapToDouble(d -> Math.abs(d.share())).max().orElse(0);
        double mild = departures.stream()
                .filter(d -> d.friction() <= 0.3)
                .mapToDouble(d -> Math.abs(d.share()))
                .max()
                .orElse(0);
        return String.format(
                Locale.ROOT,
                "Beside Den Hartog's exact amplitude the balance errs by at most %.1f %% where F/F₀ ≤ 0.3, and by at most %.0f %% over all these rows: "
                        + "the more friction takes of the force, and the farther from resonance, the more of the motion lies in higher harmonics.",
                100 * mild,
                100 * worst);
    }
}

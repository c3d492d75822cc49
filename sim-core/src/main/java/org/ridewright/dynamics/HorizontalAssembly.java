package org.ridewright.dynamics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.SpringLaws;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.FurtherMotions.Hold;
import org.ridewright.vehicle.FurtherMotions.Pull;
import org.ridewright.vehicle.SwayFigures;
import org.ridewright.vehicle.Vehicle;

/**
 * What holds and drives surge ξ and sway y.
 *
 * <p>Traces, drawbar or brake: {@code c = −ξ}, or {@code −ξ − (z − z_m) θ} at a height z of the body. Axle j: {@code c = −z_roll,j φ_j − y},
 * as a beam that rolls by φ_j rocks on its wheels and carries its roll centre aside. Wheels push with {@code Q_ξ = −N u′}.
 */
final class HorizontalAssembly {
    private final Vehicle vehicle;
    private final Coordinates coordinates;
    private final Geometry geometry;
    private final MassAssembly masses;
    private final List<Element> elements = new ArrayList<>();
    private final Optional<double[]> pull;

    HorizontalAssembly(Vehicle vehicle, Coordinates coordinates, Geometry geometry, MassAssembly masses) {
        this.vehicle = vehicle;
        this.coordinates = coordinates;
        this.geometry = geometry;
        this.masses = masses;
        if (coordinates.surge() >= 0) {
            vehicle.further().holds().forEach(this::addHold);
        }
        if (coordinates.sway() >= 0) {
            addSway();
        }
        pull = vehicle.further()
                .pull()
                .map(Pull::aboveGround)
                .map(this::forward)
                .filter(row -> Arrays.stream(row).anyMatch(x -> x != 0));
    }

    /** How far the undercarriage, or the body at a height, moves forward. */
    private double[] forward(Optional<Measure> aboveGround) {
        double[] row = new double[coordinates.size()];
        if (coordinates.surge() >= 0) {
            row[coordinates.surge()] = 1;
        }
        if (coordinates.pitch() >= 0 && aboveGround.isPresent()) {
            row[coordinates.pitch()] = aboveGround.get().value() - masses.mountHeight();
        }
        return row;
    }

    private void addHold(Hold hold) {
        double[] forward = forward(hold.aboveGround());
        ForceLaw law = SpringLaws.withDamping(ForceLaw.spring(hold.rate().value()), hold.damping());
        elements.add(new Element(hold.name(), Element.Kind.HOLD, Geometry.combine(-1, forward, 0, forward), -1, law));
    }

    private void addSway() {
        List<Axle> axles = vehicle.axles();
        boolean stated = SwayFigures.byAxles(vehicle);
        double swaying = masses.swayingMass();
        double omega = 2 * Math.PI * SwayFigures.frequency(vehicle).value();
        double zeta = SwayFigures.dampingRatio(vehicle).value();
        double[] shares = shares(axles, masses.swayingCentre());
        for (int j = 0; j < axles.size(); j++) {
            Axle axle = axles.get(j);
            double rate =
                    stated ? axle.swayRate().map(Measure::value).orElse(0.0) : shares[j] * swaying * omega * omega;
            double damping = stated
                    ? axle.swayDamping().map(Measure::value).orElse(0.0)
                    : shares[j] * 2 * zeta * omega * swaying;
            elements.add(new Element(
                    axle.name() + " sway",
                    Element.Kind.SWAY,
                    row(j, axle),
                    -1,
                    ForceLaw.spring(rate).withDamping(damping)));
        }
    }

    private double[] row(int j, Axle axle) {
        double[] row = geometry.unit(coordinates.sway());
        if (Coordinates.kind(vehicle.layout(), axle) != AxleKind.BEAM) {
            return Geometry.combine(-1, row, 0, row);
        }
        return Geometry.combine(-masses.rollAxisHeight(axle.x()), geometry.unsprungRoll(j), -1, row);
    }

    /**
     * Shares of axles whose resultant passes through x: the nearest to even ones with {@code Σ s = 1}, {@code Σ s x_j = x}; even ones where
     * that would need a negative share.
     */
    private static double[] shares(List<Axle> axles, double x) {
        double mean = axles.stream().mapToDouble(Axle::x).average().orElseThrow();
        double square =
                axles.stream().mapToDouble(a -> (a.x() - mean) * (a.x() - mean)).sum();
        double even = 1.0 / axles.size();
        double[] shares = axles.stream()
                .mapToDouble(a -> square == 0 ? even : even + (a.x() - mean) * (x - mean) / square)
                .toArray();
        if (Arrays.stream(shares).anyMatch(share -> share < 0)) {
            Arrays.fill(shares, even);
        }
        return shares;
    }

    List<Element> elements() {
        return elements;
    }

    /** Number of inputs that drive the vehicle: its speed where it surges, then the pull. */
    int inputs() {
        return (coordinates.surge() >= 0 ? 1 : 0) + (pull.isPresent() ? 1 : 0);
    }

    /** The equations with the pushes of their contacts and the pull, whose inputs begin at {@code first}. */
    Equations withPushes(Equations equations, int first) {
        List<WheelPush> wheels = new ArrayList<>();
        int next = first;
        int speed = -1;
        if (coordinates.surge() >= 0) {
            speed = next++;
            double[] back = geometry.unit(coordinates.surge());
            back[coordinates.surge()] = -1;
            for (int e = 0; e < equations.elements().size(); e++) {
                if (equations.elements().get(e).kind() == Element.Kind.CONTACT) {
                    wheels.add(new WheelPush(e, back));
                }
            }
        }
        int at = next;
        List<StatedForce> stated =
                pull.map(row -> List.of(new StatedForce("pull", row, at))).orElse(List.of());
        return equations.withPushes(new Pushes(wheels, speed, stated));
    }
}

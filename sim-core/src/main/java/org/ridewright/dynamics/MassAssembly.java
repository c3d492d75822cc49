package org.ridewright.dynamics;

import java.util.List;
import org.ridewright.dynamics.LoadedBody.RigidPart;
import org.ridewright.vehicle.AxisHeight;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleFigures;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.MountHeights;
import org.ridewright.vehicle.Vehicle;

/**
 * M, K_g and g_q, with the axes about which the body rolls and pitches.
 *
 * <p>Rolling about an axis h below its centre of mass, a part adds {@code m h²} to the roll inertia and {@code −m g h} to the roll
 * stiffness. In pitch let {@code S = Σ m h} and {@code J = Σ m h²} over body and sprung occupants, h above the spring mounts. A braked body
 * pitches about the mounts and gains J. So does one whose surge ξ is a coordinate, with {@code M_ξξ = m + m_u} and {@code M_ξθ = S}: a
 * part moves {@code ξ + h θ} forward. A free-rolling one pushes its undercarriage, {@code m_u = Σ m_j + Σ J_wheel/R²}, to and
 * fro: eliminating the surge from {@code (m + m_u) ξ̈ + S θ̈ = 0} leaves {@code J − S²/(m + m_u)}, which for one body is
 * {@code h² m m_u/(m + m_u)}, and the axis lies {@code S/(m + m_u)} above the mounts. All gain {@code −g S} in pitch stiffness.
 *
 * <p>Where the body sways, y at its roll axis, a part moves {@code y − h φ} to the left: {@code M_yy = m}, {@code M_yφ = −m h}. A beam
 * axle then rocks on its wheels, and its centre moves by {@code −R φ_j}: its roll inertia gains {@code m_j R²}.
 */
final class MassAssembly {
    private static final double G = VehicleModel.GRAVITY;

    private final int n;
    private final double[] mass;
    private final double[] gravityStiffness;
    private final double[] gravityForce;
    private final double rollAxisAtFirst;
    private final double rollAxisSlope;
    private final double firstX;
    private final boolean rollAtCentre;
    private final double pitchAxis;
    private final double bodyHeight;
    private double mountHeight;
    private double swayingMass;
    private double swayingMoment;

    MassAssembly(Vehicle vehicle, Coordinates coordinates, Geometry geometry, LoadedBody body, boolean braked) {
        n = coordinates.size();
        mass = new double[n * n];
        gravityStiffness = new double[n * n];
        gravityForce = new double[n];
        bodyHeight = body.z();
        List<Axle> axles = vehicle.axles();
        Axle first = axles.get(0);
        Axle last = axles.get(axles.size() - 1);
        firstX = first.x();
        AxisHeight rollAxis = vehicle.body().rollAxis();
        rollAtCentre = rollAxis instanceof AxisHeight.AtCentreOfMass;
        if (rollAxis instanceof AxisHeight.AtHeight level) {
            rollAxisAtFirst = level.aboveGround().value();
            rollAxisSlope = 0;
        } else {
            rollAxisAtFirst = MountHeights.rollAxisAt(first).value();
            double end = MountHeights.rollAxisAt(last).value();
            rollAxisSlope = axles.size() == 1 ? 0 : (end - rollAxisAtFirst) / (last.x() - firstX);
        }
        addBody(coordinates, geometry, body);
        addAxles(vehicle, coordinates);
        addOccupants(coordinates, geometry, body);
        pitchAxis = addPitchAxis(vehicle, coordinates, body, braked);
    }

    private void addBody(Coordinates coordinates, Geometry geometry, LoadedBody body) {
        for (int p = 0; p < body.parts().size(); p++) {
            RigidPart part = body.parts().get(p);
            double[] rise = geometry.bodyRise(part.x(), part.y());
            double[] roll = geometry.bodyRoll(p == 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY);
            if (body.rear().isPresent() && coordinates.roll() >= 0) {
                rise = partRise(coordinates, geometry, part, roll, body);
            }
            outer(mass, part.mass(), rise, rise);
            addGravity(part.mass(), rise);
            if (coordinates.roll() >= 0) {
                double h = heightAboveRollAxis(part.x(), part.z());
                outer(mass, part.rollInertia(), roll, roll);
                addAside(coordinates, part.mass(), part.x(), h, roll);
                outer(gravityStiffness, -part.mass() * G * h, roll, roll);
            }
            if (coordinates.pitch() >= 0) {
                mass[coordinates.pitch() * n + coordinates.pitch()] += part.pitchInertia();
            }
            if (coordinates.roll() >= 0 && coordinates.pitch() >= 0) {
                double[] pitch = geometry.unit(coordinates.pitch());
                outer(mass, -part.product(), roll, pitch);
                outer(mass, -part.product(), pitch, roll);
            }
        }
    }

    /** A mass moving {@code y − h φ} to the left. */
    private void addAside(Coordinates coordinates, double m, double x, double h, double[] roll) {
        swayingMass += m;
        swayingMoment += m * x;
        double[] aside = Geometry.combine(-h, roll, 0, roll);
        if (coordinates.sway() >= 0) {
            aside[coordinates.sway()] = 1;
        }
        outer(mass, m, aside, aside);
    }

    /** Rise of a part's centre of mass, by the roll of that part wherever its centre lies. */
    private static double[] partRise(
            Coordinates coordinates, Geometry geometry, RigidPart part, double[] roll, LoadedBody body) {
        double[] rise = geometry.bodyRise(part.x(), body.y());
        for (int i = 0; i < coordinates.size(); i++) {
            rise[i] += (part.y() - body.y()) * roll[i];
        }
        return rise;
    }

    private void addAxles(Vehicle vehicle, Coordinates coordinates) {
        for (int i = 0; i < vehicle.axles().size(); i++) {
            Axle axle = vehicle.axles().get(i);
            int[] index = coordinates.axle(i);
            double m = axle.unsprungMass().value();
            switch (Coordinates.kind(vehicle.layout(), axle)) {
                case SINGLE -> addPoint(index[0], m);
                case INDEPENDENT -> {
                    addPoint(index[0], m / 2);
                    addPoint(index[1], m / 2);
                }
                case BEAM -> {
                    addPoint(index[0], m);
                    double rocking = coordinates.sway() < 0 ? 0 : axle.wheel().radius();
                    mass[index[1] * n + index[1]] +=
                            AxleFigures.rollInertia(axle).value() + m * rocking * rocking;
                }
            }
        }
    }

    private void addPoint(int coordinate, double m) {
        mass[coordinate * n + coordinate] += m;
        gravityForce[coordinate] += m * G;
    }

    private void addOccupants(Coordinates coordinates, Geometry geometry, LoadedBody body) {
        List<Occupant> sprung = VehicleModel.sprung(body);
        for (int i = 0; i < sprung.size(); i++) {
            Occupant occupant = sprung.get(i);
            var place = occupant.seat().place();
            for (int stage = 0; stage < occupant.moving().size(); stage++) {
                double m = occupant.moving().get(stage).mass();
                addPoint(coordinates.occupant(i)[stage], m);
                if (coordinates.roll() >= 0) {
                    double h = heightAboveRollAxis(place.x(), place.z());
                    double[] roll = geometry.bodyRoll(place.x());
                    addAside(coordinates, m, place.x(), h, roll);
                    outer(gravityStiffness, -m * G * h, roll, roll);
                }
            }
        }
    }

    private double addPitchAxis(Vehicle vehicle, Coordinates coordinates, LoadedBody body, boolean braked) {
        boolean atCentre = coordinates.pitch() < 0 || vehicle.body().pitchAxis() instanceof AxisHeight.AtCentreOfMass;
        double mounts = atCentre ? body.z() : mountHeight(vehicle, body.x());
        double total = 0;
        double moment = 0;
        double second = 0;
        for (RigidPart part : body.parts()) {
            double h = atCentre ? 0 : part.z() - mounts;
            total += part.mass();
            moment += part.mass() * h;
            second += part.mass() * h * h;
        }
        for (Occupant occupant : VehicleModel.sprung(body)) {
            double h = atCentre ? 0 : occupant.seat().place().z() - mounts;
            double m = occupant.sprungMass();
            total += m;
            moment += m * h;
            second += m * h * h;
        }
        double pushed = total + undercarriageMass(vehicle);
        int pitch = coordinates.pitch();
        int surge = coordinates.surge();
        boolean free = surge < 0 && !braked;
        if (pitch >= 0) {
            mass[pitch * n + pitch] += free ? second - moment * moment / pushed : second;
            gravityStiffness[pitch * n + pitch] -= G * moment;
        }
        if (surge >= 0) {
            mass[surge * n + surge] += pushed;
        }
        if (surge >= 0 && pitch >= 0) {
            mass[surge * n + pitch] += moment;
            mass[pitch * n + surge] += moment;
        }
        mountHeight = mounts;
        return free ? mounts + moment / pushed : mounts;
    }

    private static double mountHeight(Vehicle vehicle, double x) {
        if (vehicle.body().pitchAxis() instanceof AxisHeight.AtHeight level) {
            return level.aboveGround().value();
        }
        Axle first = vehicle.axles().get(0);
        Axle last = vehicle.axles().get(vehicle.axles().size() - 1);
        double start = MountHeights.at(first).value();
        return vehicle.axles().size() == 1
                ? start
                : start + (MountHeights.at(last).value() - start) * (x - first.x()) / (last.x() - first.x());
    }

    /** {@code m_u = Σ m_j + Σ J_wheel/R²} (kg). */
    private static double undercarriageMass(Vehicle vehicle) {
        double sum = 0;
        for (Axle axle : vehicle.axles()) {
            int wheels = Coordinates.kind(vehicle.layout(), axle) == AxleKind.SINGLE ? 1 : 2;
            double r = axle.wheel().radius();
            sum += axle.unsprungMass().value()
                    + wheels * axle.wheel().spinInertia().value() / (r * r);
        }
        return sum;
    }

    /** Mass of all that sways with the body (kg). */
    double swayingMass() {
        return swayingMass;
    }

    /** x of its centre (m). */
    double swayingCentre() {
        return swayingMoment / swayingMass;
    }

    /** Height of the roll axis at x (m). */
    double rollAxisHeight(double x) {
        return rollAtCentre ? bodyHeight : rollAxisAtFirst + rollAxisSlope * (x - firstX);
    }

    private double heightAboveRollAxis(double x, double z) {
        return rollAtCentre ? 0 : z - rollAxisHeight(x);
    }

    /** Height of the spring mounts at the centre of mass, about which the body pitches while the undercarriage stays in its place (m). */
    double mountHeight() {
        return mountHeight;
    }

    /** Height of the axis about which the body pitches (m); where it surges, that of the mounts. */
    double pitchAxisHeight() {
        return pitchAxis;
    }

    private void addGravity(double m, double[] rise) {
        for (int i = 0; i < n; i++) {
            gravityForce[i] += m * G * rise[i];
        }
    }

    private void outer(double[] matrix, double factor, double[] a, double[] b) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                matrix[i * n + j] += factor * a[i] * b[j];
            }
        }
    }

    Equations equations(List<Element> elements, int inputs) {
        return new Equations(mass, gravityStiffness, gravityForce, elements, inputs);
    }
}

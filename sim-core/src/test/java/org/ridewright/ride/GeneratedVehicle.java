package org.ridewright.ride;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import org.ridewright.vehicle.Vehicle;

/**
 * A plausible vehicle on two axles, made by chance: beams or independent wheels, iron or pneumatic tyres, steel or gas, friction of every
 * kind, dampers, helpers, stops, bars, a seat, a body or an undercarriage that twists.
 *
 * @param across place of the centre of mass, left of the centre line (m)
 * @param above centre of mass over the spring mounts (m)
 * @param product of inertia over the mean of the two inertias
 * @param seatMass of who sits there (kg), or 0
 * @param twist 0 none, 1 of the undercarriage, 2 of the body
 */
record GeneratedVehicle(
        double mass,
        double wheelbase,
        double centre,
        double across,
        double above,
        double rollRadius,
        double pitchRadius,
        double product,
        AxlePlan front,
        AxlePlan rear,
        double seatMass,
        boolean cushion,
        double seatAcross,
        int twist) {
    private static final int KNOBS = 60;
    private static final double MOUNT = 0.5;

    static Arbitrary<GeneratedVehicle> any() {
        return Knobs.settings(KNOBS).map(GeneratedVehicle::of);
    }

    /** One of them. */
    static GeneratedVehicle any(Random random) {
        return of(random.doubles(KNOBS).boxed().toList());
    }

    private static GeneratedVehicle of(List<Double> settings) {
        Knobs knobs = Knobs.of(settings);
        double mass = knobs.spread(600, 3000);
        double wheelbase = knobs.between(2, 3.2);
        double centre = knobs.between(0.5, 0.4) * wheelbase;
        double across = knobs.chance(0.5) ? knobs.between(-0.02, 0.02) : 0;
        double above = knobs.between(0.1, 0.3);
        double rollRadius = knobs.between(0.5, 0.7);
        double pitchRadius = wheelbase * knobs.between(0.4, 0.5);
        double product = knobs.chance(0.2) ? knobs.between(-0.05, 0.05) : 0;
        double seatMass = knobs.chance(0.6) ? knobs.between(60, 90) : 0;
        boolean cushion = knobs.chance(0.6);
        double seatAcross = knobs.between(0, 0.4);
        int twist = knobs.choice(3);
        AxlePlan front = AxlePlan.of(knobs, mass * (1 - centre / wheelbase));
        AxlePlan rear = AxlePlan.of(knobs, mass * centre / wheelbase);
        return new GeneratedVehicle(
                mass,
                wheelbase,
                centre,
                across,
                above,
                rollRadius,
                pitchRadius,
                product,
                front,
                rear,
                seatMass,
                cushion,
                seatAcross,
                twist);
    }

    GeneratedVehicle with(AxlePlan newFront, AxlePlan newRear) {
        return new GeneratedVehicle(
                mass,
                wheelbase,
                centre,
                across,
                above,
                rollRadius,
                pitchRadius,
                product,
                newFront,
                newRear,
                seatMass,
                cushion,
                seatAcross,
                twist);
    }

    GeneratedVehicle with(SpringPlan newFront, SpringPlan newRear) {
        return with(front.with(newFront), rear.with(newRear));
    }

    GeneratedVehicle mirrored() {
        return new GeneratedVehicle(
                mass,
                wheelbase,
                centre,
                -across,
                above,
                rollRadius,
                pitchRadius,
                -product,
                front.mirrored(),
                rear.mirrored(),
                seatMass,
                cushion,
                -seatAcross,
                twist);
    }

    /** With its centre of mass off the centre line by a little more. */
    GeneratedVehicle offCentre() {
        return new GeneratedVehicle(
                mass,
                wheelbase,
                centre,
                across + 1.3e-3,
                above,
                rollRadius,
                pitchRadius,
                product,
                front,
                rear,
                seatMass,
                cushion,
                seatAcross,
                twist);
    }

    /** Nobody aboard, in one piece, the same left and right. */
    GeneratedVehicle plain() {
        AxlePlan evenFront = front.isUneven() ? new MirrorMean(front).plan() : front;
        AxlePlan evenRear = rear.isUneven() ? new MirrorMean(rear).plan() : rear;
        return new GeneratedVehicle(
                mass, wheelbase, centre, 0, above, rollRadius, pitchRadius, 0, evenFront, evenRear, 0, false, 0, 0);
    }

    /** An axle with the imbalance of its springs taken out. */
    private record MirrorMean(AxlePlan axle) {
        AxlePlan plan() {
            return new AxlePlan(
                    axle.beam(),
                    axle.track(),
                    axle.unsprung(),
                    axle.diameter(),
                    axle.iron(),
                    axle.contactRate(),
                    axle.contactRatio(),
                    axle.spring(),
                    0,
                    axle.damping(),
                    axle.rebound(),
                    axle.table(),
                    axle.bar());
        }
    }

    Vehicle vehicle() {
        return vehicle(1);
    }

    /**
     * @param parts into how many like springs each spring is split
     */
    Vehicle vehicle(int parts) {
        return Fleet.described(yaml(parts));
    }

    String yaml(int parts) {
        StringBuilder text = new StringBuilder();
        double share = twist == 2 ? 0.5 : 1;
        double z = MOUNT + above;
        // A body in two parts has its joint amidships and half of the mass in either, a quarter of the wheelbase away.
        double ahead = twist == 2 ? 0.25 * wheelbase : 0;
        double ownPitch = pitchRadius * pitchRadius - ahead * ahead;
        double roll = share * mass * rollRadius * rollRadius;
        double pitch = share * mass * ownPitch;
        text.append("vehicle: generated\nbody:\n");
        text.append(f("  mass: %.12g kg\n  centre of mass: %s\n", share * mass, place(centre - ahead, across, z)));
        text.append(f("  roll inertia: %.12g kg m2\n  pitch inertia: %.12g kg m2\n", roll, pitch));
        text.append(f("  roll axis: %.12g m\n  spring mount height: %.12g m\n", MOUNT, MOUNT));
        if (product != 0) {
            text.append(f("  product of inertia: %.12g kg m2\n", product * (roll + pitch) / 2));
        }
        if (twist == 2) {
            text.append(f(
                    "  rear body:\n    joint behind front axle: %.12g m\n    mass: %.12g kg\n", centre, share * mass));
            text.append(f("    centre of mass: %s\n", place(centre + ahead, across, z)));
            text.append(f("    roll inertia: %.12g kg m2\n    pitch inertia: %.12g kg m2\n", roll, pitch));
            text.append(
                    f("    twist rate: %.12g N m/rad\n    twist damping: %.12g N m s/rad\n", 60 * mass, 0.3 * mass));
        }
        text.append("axles:\n");
        text.append(front.yaml("front", 0, MOUNT, parts)).append(rear.yaml("rear", wheelbase, MOUNT, parts));
        if (twist == 1) {
            text.append(f(
                    "connections: [{kind: undercarriage twist, name: reach, front axle: front, rear axle: rear, rate: %.12g N m/rad, "
                            + "friction: {constant: %.12g N m, locked rate: %.12g N m/rad}}]\n",
                    3 * mass, 0.05 * mass, 30 * mass));
        }
        if (seatMass > 0) {
            text.append(f("seats: [{name: seat, at: %s", place(0.4 * wheelbase, seatAcross, z + 0.4)));
            if (cushion) {
                text.append(", cushion: {rate: 25 N/mm, damping ratio: 0.2, mass: 5 kg}");
            }
            text.append("}]\n");
        }
        text.append("load cases:\n  - {name: run, aboard: [");
        if (seatMass > 0) {
            text.append(f("{person: rider, mass: %.12g kg, seat: seat}", seatMass));
        }
        text.append("]}\n");
        return text.toString();
    }

    private static String place(double behind, double across, double height) {
        return f(
                "{behind front axle: %.12g m, left of centre: %.12g m, above ground: %.12g m}", behind, across, height);
    }

    private static String f(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    @Override
    public String toString() {
        return yaml(1);
    }
}

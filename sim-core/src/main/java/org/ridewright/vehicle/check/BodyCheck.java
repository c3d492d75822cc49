package org.ridewright.vehicle.check;

import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.AxisHeight;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Outline;
import org.ridewright.vehicle.RearBody;
import org.ridewright.vehicle.SprungBody;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.vehicle.Weighbridge;

/** Judges the sprung body. */
record BodyCheck(Vehicle vehicle, Faults faults) {
    static final double HEAVIEST = 60_000;
    private static final double GREATEST_ROLL_RADIUS = 3;
    private static final double GREATEST_PITCH_RADIUS = 10;
    private static final double HIGHEST = 5;
    private static final double LONGEST = 30;

    void run() {
        SprungBody body = vehicle.body();
        body.mass().ifPresent(mass -> mass("body.mass", mass));
        faults.positive("body.roll inertia", body.rollInertia());
        faults.positive("body.pitch inertia", body.pitchInertia());
        radius("body.roll", body.rollRadius(), body.rollInertia(), GREATEST_ROLL_RADIUS);
        radius("body.pitch", body.pitchRadius(), body.pitchInertia(), GREATEST_PITCH_RADIUS);
        body.outline().ifPresent(outline -> outline("body.outline", outline, faults));
        height("body.centre of mass.above ground", body.centreAboveGround());
        axis("body.roll axis", body.rollAxis());
        axis("body.pitch axis", body.pitchAxis());
        centre(body);
        product(body);
        weighbridge(body);
        body.rearBody().ifPresent(this::rearBody);
    }

    static void outline(String path, Outline outline, Faults faults) {
        dimension(path + ".length", outline.length(), faults);
        dimension(path + ".width", outline.width(), faults);
        dimension(path + ".height", outline.height(), faults);
    }

    private static void dimension(String path, Measure measure, Faults faults) {
        faults.positive(path, measure);
        if (measure.value() > LONGEST) {
            faults.within(path, measure, 0, LONGEST, "check the unit");
        }
    }

    private void mass(String path, Measure mass) {
        faults.positive(path, mass);
        if (mass.value() > HEAVIEST) {
            faults.within(path, mass, 0, HEAVIEST, "check the unit");
        }
    }

    private void height(String path, Optional<Measure> height) {
        height.ifPresent(value -> faults.within(path, value, 0, HIGHEST, "give the height above the ground"));
    }

    private void axis(String path, AxisHeight axis) {
        if (axis instanceof AxisHeight.AtHeight height) {
            faults.within(path, height.aboveGround(), -1, HIGHEST, "give the height above the ground");
        }
    }

    private void radius(String key, Optional<Measure> radius, Optional<Measure> inertia, double greatest) {
        radius.ifPresent(given -> {
            faults.positive(key + " radius of gyration", given);
            if (given.value() > greatest) {
                faults.within(key + " radius of gyration", given, 0, greatest, "check the unit");
            }
        });
        Optional<Measure> mass = vehicle.body().mass();
        if (inertia.isEmpty() || mass.isEmpty() || !(mass.get().value() > 0)) {
            return;
        }
        double implied = Math.sqrt(inertia.get().value() / mass.get().value());
        if (implied > greatest) {
            faults.add(
                    key + " inertia",
                    inertia.get().written(),
                    "with a mass of " + mass.get().written() + " is a radius of gyration of " + Faults.plain(implied)
                            + " m",
                    "a radius of at most " + Faults.plain(greatest) + " m",
                    "check the unit of both",
                    "body.mass");
        }
    }

    private void centre(SprungBody body) {
        if (!vehicle.layout().pitches()) {
            return;
        }
        String path = "body.centre of mass.behind front axle";
        if (body.centreBehindFrontAxle().isEmpty()) {
            if (body.weighbridge().isEmpty()) {
                faults.add(
                        path,
                        "",
                        "is missing; a vehicle that pitches needs to know where its mass is",
                        "a length, or a weighbridge that shows it",
                        "add centre of mass: {behind front axle: ..., above ground: ...} to body",
                        "layout");
            }
            return;
        }
        if (body.weighbridge().isPresent()) {
            faults.add(
                    path,
                    body.centreBehindFrontAxle().get().written(),
                    "is given beside a weighbridge, which shows it already",
                    "one of them",
                    "remove one of them");
        } else if (vehicle.hitches().isEmpty() && vehicle.axles().size() > 1) {
            betweenAxles(path, body.centreBehindFrontAxle().get());
        }
    }

    private void betweenAxles(String path, Measure centre) {
        int last = vehicle.axles().size() - 1;
        Measure wheelbase = vehicle.axles().get(last).behindFrontAxle();
        if (centre.value() <= 0 || centre.value() >= wheelbase.value()) {
            faults.add(
                    path,
                    centre.written(),
                    "is not between the first and the last axle, and no hitch holds the vehicle from tipping over",
                    "a distance behind the front axle above 0 and below the wheelbase of " + wheelbase.written(),
                    "check where it is measured from, or describe the hitch, shafts or drawbar under hitches",
                    "axles[" + last + "].behind front axle",
                    "hitches",
                    "layout");
        }
    }

    /** The two planes share the matter of one body: {@code |I_xy| < √(I_xx I_yy)} (Cauchy–Schwarz). */
    private void product(SprungBody body) {
        Measure product = body.productOfInertia();
        String path = "body.product of inertia";
        if (product.value() != 0 && vehicle.layout() != Layout.FULL) {
            faults.add(path, product.written(), "has a meaning in the full layout alone", "", "remove it", "layout");
            return;
        }
        Optional<Double> roll = inertia(body, body.rollInertia(), body.rollRadius());
        Optional<Double> pitch = inertia(body, body.pitchInertia(), body.pitchRadius());
        if (product.value() == 0 || roll.isEmpty() || pitch.isEmpty()) {
            return;
        }
        double bound = Math.sqrt(roll.get() * pitch.get());
        if (bound > 0 && Math.abs(product.value()) >= bound) {
            faults.add(
                    path,
                    product.written(),
                    "is more than a body with these moments of inertia in roll and pitch can have",
                    "less than √(roll inertia × pitch inertia) = " + Faults.plain(bound) + " kg·m² either way",
                    "write 0 kg m² for a body that is alike on both sides",
                    "body.mass",
                    "body.roll inertia",
                    "body.pitch inertia",
                    "body.roll radius of gyration",
                    "body.pitch radius of gyration");
        }
    }

    private static Optional<Double> inertia(SprungBody body, Optional<Measure> given, Optional<Measure> radius) {
        return given.map(Measure::value)
                .or(() -> body.mass().flatMap(mass -> radius.map(r -> mass.value() * r.value() * r.value())));
    }

    private void weighbridge(SprungBody body) {
        body.weighbridge().ifPresent(scales -> {
            String path = "body.weighbridge";
            if (scales.axleLoads().size() != vehicle.axles().size()) {
                faults.add(
                        path + ".axle loads",
                        "",
                        "has " + scales.axleLoads().size() + " values for "
                                + vehicle.axles().size() + " axles",
                        "one value for each axle, from front to rear",
                        "weigh each axle, or give mass and centre of mass instead",
                        "axles");
            } else {
                axleLoads(path);
                remainder(scales, path);
            }
            faults.notNegative(path + ".hitch load", scales.hitchLoad());
            if (scales.hitchLoad().value() > 0 && vehicle.hitches().isEmpty()) {
                faults.add(
                        path + ".hitch load",
                        scales.hitchLoad().written(),
                        "rests on a hitch that the vehicle does not have",
                        "",
                        "describe it under hitches, or remove the hitch load",
                        "hitches");
            }
            if (!scales.loadCase().isEmpty()) {
                faults.known(path + ".with", scales.loadCase(), LoadCaseCheck.names(vehicle), "load case");
            }
        });
    }

    /** What is left on the scales for the body. */
    private void remainder(Weighbridge scales, String path) {
        double shown = scales.hitchLoad().value()
                + scales.axleLoads().stream().mapToDouble(Measure::value).sum();
        double unsprung = vehicle.axles().stream()
                .mapToDouble(axle -> axle.unsprungMass().value())
                .sum();
        double aboard = vehicle.loadCase(scales.loadCase()).stream()
                .flatMap(loadCase -> loadCase.aboard().stream())
                .mapToDouble(load -> load.mass().value())
                .sum();
        if (shown > unsprung && shown - unsprung - aboard <= 0) {
            faults.add(
                    path + ".axle loads",
                    "",
                    "leaves no mass for the body: " + Faults.plain(shown) + " kg shown, less " + Faults.plain(unsprung)
                            + " kg unsprung and " + Faults.plain(aboard) + " kg aboard",
                    "the mass of the whole vehicle with the load case " + scales.loadCase() + " aboard",
                    "check which load case was aboard",
                    "axles",
                    "load cases",
                    path);
        }
    }

    private void axleLoads(String path) {
        for (int i = 0; i < vehicle.axles().size(); i++) {
            Measure load =
                    vehicle.body().weighbridge().orElseThrow().axleLoads().get(i);
            Measure unsprung = vehicle.axles().get(i).unsprungMass();
            if (load.value() <= unsprung.value() && vehicle.layout() != Layout.QUARTER) {
                faults.add(
                        path + ".axle loads[" + i + "]",
                        load.written(),
                        "is not more than the axle's own unsprung mass of " + unsprung.written(),
                        "the whole mass on the scales under this axle",
                        "check the unit, and that nothing has been taken off the reading",
                        "axles[" + i + "].unsprung mass");
            }
        }
    }

    private void rearBody(RearBody rear) {
        String path = "body.rear body";
        if (vehicle.layout() != Layout.FULL) {
            faults.add(path, "", "has a meaning in the full layout alone", "", "remove it", "layout");
        }
        mass(path + ".mass", rear.mass());
        faults.positive(path + ".roll inertia", rear.rollInertia());
        faults.notNegative(path + ".pitch inertia", rear.pitchInertia());
        faults.positive(path + ".twist rate", rear.twistRate());
        faults.notNegative(path + ".twist damping", rear.twistDamping());
        if (rear.centre().behindFrontAxle().value() < rear.joint().value()) {
            faults.add(
                    path + ".centre of mass.behind front axle",
                    rear.centre().behindFrontAxle().written(),
                    "is ahead of the joint at " + rear.joint().written(),
                    "a place behind the joint",
                    "measure both from the front axle",
                    path + ".joint behind front axle");
        }
    }
}

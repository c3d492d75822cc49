package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.quantity.Measure;
import org.ridewright.suspension.SpringLaws;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.vehicle.check.Fault;
import org.ridewright.vehicle.check.Faults;

/** Stands a vehicle, sound by its description, on its springs, and says of what keeps it from standing where it is written. */
public final class StandingCheck {
    private final Vehicle vehicle;
    private final Faults faults = new Faults();

    private StandingCheck(Vehicle vehicle) {
        this.vehicle = vehicle;
    }

    /** What keeps the vehicle from standing, at most one fault for each of its load cases. */
    public static List<Fault> faults(Vehicle vehicle) {
        StandingCheck check = new StandingCheck(vehicle);
        for (int i = 0; i < vehicle.loadCases().size(); i++) {
            check.stand(i);
        }
        return check.faults.found();
    }

    private void stand(int index) {
        LoadCase load = vehicle.loadCases().get(index);
        try {
            VehicleModel.assemble(vehicle, load, Optional.empty(), false);
        } catch (RideException fallen) {
            Optional<Overhang> overhang = Overhang.of(vehicle, index);
            if (overhang.isPresent()) {
                overhang.get().addTo(faults);
                return;
            }
            Suspect suspect = suspect(fallen)
                    .orElse(new Suspect(
                            "load cases[" + index + "]", "", "check the springs, and what is aboard and where"));
            faults.add(
                    suspect.path(),
                    suspect.value(),
                    (suspect.value().isEmpty() ? "" : "keeps the vehicle from standing: ") + sentence(fallen),
                    "",
                    suspect.fix());
        }
    }

    /** The message without the vehicle, which the file names, and the advice, which the place makes more precise. */
    private String sentence(RideException fallen) {
        return fallen.getMessage()
                .replace("'" + vehicle.name() + "', ", "")
                .replaceFirst("\\. Check .*$", "")
                .replaceFirst("\\.$", "");
    }

    /** A part of the file that the fault most likely lies with. */
    private record Suspect(String path, String value, String fix) {}

    private Optional<Suspect> suspect(RideException fallen) {
        return fallen.element().isPresent()
                ? named(fallen.element().get(), fallen.ofSprings())
                : fallen.ofSprings() ? softest() : Optional.empty();
    }

    /** The spring that lifts the body least for its travel: that with a slip of the pen or of the unit in its rate. */
    private Optional<Suspect> softest() {
        Optional<Suspect> softest = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int a = 0; a < vehicle.axles().size(); a++) {
            List<Spring> springs = vehicle.axles().get(a).springs();
            double rate =
                    springs.stream().mapToDouble(StandingCheck::rateAtAxle).sum();
            if (rate < least && !springs.isEmpty()) {
                least = rate;
                softest = Optional.of(law(springs.get(0), "axles[" + a + "].springs[0]"));
            }
        }
        return softest;
    }

    private static double rateAtAxle(Spring spring) {
        double ratio = spring.motionRatio().map(Measure::value).orElse(1.0);
        return SpringLaws.workingRate(spring.kind(), spring.elasticity()) * ratio * ratio;
    }

    private Optional<Suspect> named(String element, boolean byRate) {
        String name = element.replaceFirst(" (left|right)$", "");
        List<Suspect> found = new ArrayList<>();
        for (int a = 0; a < vehicle.axles().size(); a++) {
            Axle axle = vehicle.axles().get(a);
            for (int s = 0; s < axle.springs().size(); s++) {
                if (Element.nameOf(axle.name(), axle.springs().get(s).name()).equals(name)) {
                    String path = "axles[" + a + "].springs[" + s + "]";
                    found.add(
                            byRate
                                    ? law(axle.springs().get(s), path)
                                    : new Suspect(path, "", "check the clearances and what was aboard with each"));
                }
            }
        }
        for (int c = 0; c < vehicle.connections().size(); c++) {
            if (name.startsWith(vehicle.connections().get(c).name())) {
                found.add(new Suspect(
                        "connections[" + c + "]",
                        "",
                        byRate ? "check its rate and the unit" : "check its terms and their weights"));
            }
        }
        return found.stream().findFirst();
    }

    private static Suspect law(Spring spring, String path) {
        Elasticity elasticity = spring.elasticity();
        String fix = "check what it is made of, which makes a rate of "
                + Faults.plain(SpringLaws.workingRate(spring.kind(), elasticity) / 1000) + " N/mm";
        if (elasticity instanceof Elasticity.Rate rate) {
            return new Suspect(path + ".rate", rate.rate().written(), "check the rate and its unit");
        } else if (elasticity instanceof Elasticity.CoilWire wire) {
            return new Suspect(
                    path + ".wire.working coils",
                    Faults.plain(wire.workingCoils()),
                    "check the number of coils and both diameters, which make a rate of "
                            + Faults.plain(SpringLaws.workingRate(spring.kind(), elasticity) / 1000) + " N/mm");
        } else if (elasticity instanceof Elasticity.LeafPack) {
            return new Suspect(path + ".leaves", "", fix);
        } else if (elasticity instanceof Elasticity.TorsionRod) {
            return new Suspect(path + ".bar", "", fix);
        } else if (elasticity instanceof Elasticity.GasColumn) {
            return new Suspect(path + ".gas", "", "check the gas");
        }
        return new Suspect(path + ".table", "", "check the units of the table");
    }
}

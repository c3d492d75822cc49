package org.ridewright.fieldwork;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.vehicle.check.Fault;
import org.ridewright.vehicle.check.Faults;

/**
 * Looks for facts that cannot be, for names that the vehicle does not have, and for facts that lack what they are worked out with. How
 * well they agree with each other and with the vehicle is for a calibration to say.
 */
public final class MeasurementsCheck {
    private MeasurementsCheck() {}

    /** Everything wrong with the measurements. */
    public static List<Fault> faults(Measurements measurements) {
        Faults faults = new Faults();
        if (measurements.facts().isEmpty()) {
            faults.add("facts", "", "has none", "at least one", "begin with weights, or with heights at four corners");
        }
        names(measurements, faults);
        Names names = new Names(measurements.vehicle(), faults);
        for (int i = 0; i < measurements.facts().size(); i++) {
            Fact fact = measurements.facts().get(i);
            String path = "facts[" + i + "]." + fact.key();
            check(fact, path, measurements, names, faults);
        }
        return faults.found();
    }

    private static void names(Measurements measurements, Faults faults) {
        List<String> names = new ArrayList<>();
        List<String> paths = new ArrayList<>();
        for (int i = 0; i < measurements.facts().size(); i++) {
            Fact fact = measurements.facts().get(i);
            if (!fact.heading().name().isEmpty()) {
                names.add(fact.heading().name());
                paths.add("facts[" + i + "]." + fact.key() + ".name");
            }
        }
        faults.distinct(names, paths, "fact");
    }

    private static void check(Fact fact, String path, Measurements measurements, Names names, Faults faults) {
        fact.loading().ifPresent(loading -> names.loading(path, loading));
        if (fact instanceof Weights weights) {
            new ScalesCheck(names, faults).weights(path, weights);
        } else if (fact instanceof LiftedAxle lifted) {
            new ScalesCheck(names, faults).lifted(path, lifted, measurements);
        } else if (fact instanceof SwingTest swing) {
            new SwingCheck(names, faults).run(path, swing);
        } else if (fact instanceof LoadDeflection loop) {
            new SpringFactCheck(names, faults).loop(path, loop);
        } else if (fact instanceof Camber camber) {
            new SpringFactCheck(names, faults).camber(path, camber);
        } else if (fact instanceof Heights heights) {
            new HeightsCheck(names, faults).run(path, heights);
        } else if (fact instanceof BounceCount count) {
            new BounceCheck(names, faults).count(path, count);
        } else if (fact instanceof BounceLog log) {
            new BounceCheck(names, faults).log(path, log);
        } else if (fact instanceof MeasuredRide ride) {
            new RideFactCheck(names, faults).ride(path, ride);
        } else if (fact instanceof RidersWords words) {
            new RideFactCheck(names, faults).words(path, words);
        }
    }
}

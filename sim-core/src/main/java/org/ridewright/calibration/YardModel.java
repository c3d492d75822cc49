package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.quantity.Adjustable;
import org.ridewright.vehicle.Vehicle;

/** All evidence of one vehicle as one model: unknown values of its file first, then the circumstances of each fact. */
final class YardModel implements ForwardModel {
    private final Adjustable<Vehicle> file;
    private final List<Unknown> ofVehicle;
    private final List<Evidence> evidence;

    YardModel(Adjustable<Vehicle> file, List<Unknown> ofVehicle, List<Evidence> evidence) {
        this.file = file;
        this.ofVehicle = List.copyOf(ofVehicle);
        this.evidence = List.copyOf(evidence);
    }

    List<Evidence> evidence() {
        return evidence;
    }

    /** Values of the vehicle, then circumstances. */
    List<Unknown> unknowns() {
        List<Unknown> all = new ArrayList<>(ofVehicle);
        evidence.forEach(e -> all.addAll(e.circumstances()));
        return all;
    }

    List<Datum> data() {
        return evidence.stream().flatMap(e -> e.data().stream()).toList();
    }

    /** The vehicle that has these unknowns. */
    Vehicle vehicle(double[] z) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int j = 0; j < ofVehicle.size(); j++) {
            texts.put(ofVehicle.get(j).path(), ofVehicle.get(j).written(z[j]));
        }
        return file.with(texts);
    }

    @Override
    public double[] predict(double[] z) {
        Trial trial = new Trial(vehicle(z));
        List<double[]> parts = new ArrayList<>();
        int next = ofVehicle.size();
        for (Evidence one : evidence) {
            List<Unknown> own = one.circumstances();
            parts.add(one.predict(trial, circumstances(own, z, next)));
            next += own.size();
        }
        return parts.stream().flatMapToDouble(Arrays::stream).toArray();
    }

    List<Unknown> unknownsOfVehicle() {
        return ofVehicle;
    }

    /** Circumstances of one piece of evidence (SI). */
    double[] circumstances(Evidence wanted, double[] z) {
        return circumstances(wanted.circumstances(), z, place(wanted));
    }

    /** Index of the first circumstance of one piece of evidence. */
    int place(Evidence wanted) {
        int next = ofVehicle.size();
        for (Evidence one : evidence) {
            if (one == wanted) {
                return next;
            }
            next += one.circumstances().size();
        }
        throw new IllegalArgumentException("no such evidence");
    }

    private static double[] circumstances(List<Unknown> own, double[] z, int from) {
        double[] values = new double[own.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = own.get(i).spread().at(z[from + i]);
        }
        return values;
    }
}

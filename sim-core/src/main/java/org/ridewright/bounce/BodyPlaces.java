package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Vehicle;

/** Where the body is pressed and watched. */
final class BodyPlaces {
    private final VehicleModel model;
    private final Vehicle vehicle;
    private final double front;
    private final double rear;

    BodyPlaces(VehicleModel model) {
        this.model = model;
        vehicle = model.vehicle();
        front = vehicle.axles().get(0).behindFrontAxle().value();
        rear = vehicle.axles().get(vehicle.axles().size() - 1).behindFrontAxle().value();
    }

    private double[] rise(double behind, double left) {
        return model.motionAt(Place.of(behind, left, 0)).rise();
    }

    /**
     * Row of how far the pressed place moves the way it is pressed; a unit force there is this row on the coordinates. A rocked body is pressed
     * with half the force at either end.
     */
    double[] pressed(BounceKind kind, double sense) {
        double middle = (front + rear) / 2;
        double[] row =
                switch (kind) {
                    case FRONT -> rise(front, 0);
                    case REAR -> rise(rear, 0);
                    case PITCH -> combine(0.5, rise(front, 0), -0.5, rise(rear, 0));
                    case ROLL -> rise(middle, side());
                    case ROLL_RIGHT -> rise(middle, -side());
                    case HEAVE ->
                        rise(-model.centreOfMass().x(), model.centreOfMass().y());
                };
        return combine(-sense, row, 0, row);
    }

    /** Half the width of the body, or where its outline is not known half the track (m). */
    private double side() {
        return vehicle.body().outline().map(o -> o.width().value() / 2).orElseGet(this::halfTrack);
    }

    private double halfTrack() {
        return vehicle.axles().stream()
                        .flatMap(axle -> axle.track().stream())
                        .mapToDouble(Measure::value)
                        .max()
                        .orElse(1)
                / 2;
    }

    /** Every motion that the vehicle has. An angle is seen by what it moves at axles or wheels. */
    List<BodyReading> readings(double visible) {
        List<BodyReading> readings = new ArrayList<>();
        double[] q = model.rest().q();
        List<Axle> axles = vehicle.axles();
        readings.add(BodyReading.from(Motion.FRONT, rise(front, 0), q, visible));
        if (BounceKind.REAR.suits(vehicle)) {
            readings.add(BodyReading.from(Motion.REAR, rise(rear, 0), q, visible));
        }
        if (vehicle.layout().pitches()) {
            double half = axles.size() > 1 ? (rear - front) / 2 : 1;
            double[] pitch = new double[q.length];
            pitch[model.coordinates().pitch()] = 1;
            readings.add(BodyReading.from(Motion.PITCH, pitch, q, visible / half));
        }
        if (vehicle.layout().rolls()) {
            double[] roll = combine(1, rise(front, 0.5), -1, rise(front, -0.5));
            readings.add(BodyReading.from(Motion.ROLL, roll, q, visible / halfTrack()));
        }
        double[] centre = rise(-model.centreOfMass().x(), model.centreOfMass().y());
        readings.add(BodyReading.from(Motion.CENTRE, centre, q, visible));
        return readings;
    }

    private static double[] combine(double a, double[] x, double b, double[] y) {
        double[] sum = new double[x.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = a * x[i] + b * y[i];
        }
        return sum;
    }
}

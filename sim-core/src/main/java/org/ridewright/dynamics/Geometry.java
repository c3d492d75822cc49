package org.ridewright.dynamics;

import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.Vehicle;

/**
 * Rows of kinematics: how far a point rises for unit coordinates. A body point rises by {@code z_G + (y_P − y_G) φ − (x_P − x_G) θ}, with
 * {@code φ + ψ} for φ on the rear part of a body that twists.
 */
final class Geometry {
    private final Vehicle vehicle;
    private final Coordinates coordinates;
    private final double xG;
    private final double yG;

    Geometry(Vehicle vehicle, Coordinates coordinates, LoadedBody body) {
        this.vehicle = vehicle;
        this.coordinates = coordinates;
        this.xG = body.x();
        this.yG = body.y();
    }

    private double[] zero() {
        return new double[coordinates.size()];
    }

    /** Row of a single coordinate. */
    double[] unit(int coordinate) {
        double[] row = zero();
        row[coordinate] = 1;
        return row;
    }

    /** Whether the body at x belongs to the rear part. */
    boolean isRear(double x) {
        return coordinates.twist() >= 0
                && vehicle.body().rearBody().isPresent()
                && -x > vehicle.body().rearBody().get().joint().value();
    }

    /** Rise of the body at (x, y). */
    double[] bodyRise(double x, double y) {
        double[] row = bodyRoll(x);
        for (int i = 0; i < row.length; i++) {
            row[i] *= y - yG;
        }
        row[coordinates.heave()] = 1;
        if (coordinates.pitch() >= 0) {
            row[coordinates.pitch()] = -(x - xG);
        }
        return row;
    }

    /** Roll of the body at x; zero if it does not roll. */
    double[] bodyRoll(double x) {
        double[] row = zero();
        if (coordinates.roll() >= 0) {
            row[coordinates.roll()] = 1;
        }
        if (isRear(x)) {
            row[coordinates.twist()] = 1;
        }
        return row;
    }

    /** Rise of axle i, or of the line between its independent wheels, at y. */
    double[] unsprungRise(int i, double y) {
        double[] row = zero();
        int[] index = coordinates.axle(i);
        Axle axle = vehicle.axles().get(i);
        switch (Coordinates.kind(vehicle.layout(), axle)) {
            case SINGLE -> row[index[0]] = 1;
            case BEAM -> {
                row[index[0]] = 1;
                row[index[1]] = y;
            }
            case INDEPENDENT -> {
                double share = 0.5 + y / axle.track().orElseThrow().value();
                row[index[0]] = share;
                row[index[1]] = 1 - share;
            }
        }
        return row;
    }

    /** Roll of axle i; of independent wheels the slope of the line between them. */
    double[] unsprungRoll(int i) {
        double[] left = unsprungRise(i, 0.5);
        double[] right = unsprungRise(i, -0.5);
        return combine(1, left, -1, right);
    }

    /** y of the wheels of axle i, left first. */
    double[] wheelPlaces(int i) {
        Axle axle = vehicle.axles().get(i);
        if (Coordinates.kind(vehicle.layout(), axle) == AxleKind.SINGLE) {
            return new double[] {0};
        }
        double half = axle.track().orElseThrow().value() / 2;
        return new double[] {half, -half};
    }

    static double[] combine(double a, double[] x, double b, double[] y) {
        double[] sum = new double[x.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = a * x[i] + b * y[i];
        }
        return sum;
    }

    /** Compression between axle i and the body above it at y. */
    double[] cornerCompression(int i, double y) {
        return combine(
                1, unsprungRise(i, y), -1, bodyRise(vehicle.axles().get(i).x(), y));
    }
}

package org.ridewright.modal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ridewright.dynamics.Coordinates;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.vehicle.Axle;

/**
 * The motions of which a vehicle's modes are made, and how much of a mode's kinetic energy lies in each.
 *
 * <p>People count by how they move against what they sit on: with {@code q = T y}, y the coordinates of body and axles with
 * {@code z_o − B_below q} in place of each occupant's z_o, a motion has the share {@code y_i (Tᵀ M φ)_i} of {@code φᵀ M φ}. So a body that
 * carries its passengers along bounces, however heavy they are.
 */
final class Parts {
    /** One motion: its amplitude is {@code row·φ}, its share that times {@code momentum·Mφ}. */
    private record Part(String name, Motion motion, double[] amplitude, double[] momentum) {}

    private final Equations equations;
    private final int n;
    private final List<Part> parts = new ArrayList<>();

    Parts(VehicleModel model) {
        equations = model.equations();
        n = equations.size();
        double[][] back = unity();
        double[][] carried = unity();
        occupants(model, back, carried);
        Coordinates at = model.coordinates();
        addBody(at, back, carried);
        for (int a = 0; a < model.vehicle().axles().size(); a++) {
            addAxle(model.vehicle().axles().get(a), at.axle(a), at.units(), back, carried);
        }
        int taken = at.axle(model.vehicle().axles().size() - 1)[0];
        int last = at.axle(model.vehicle().axles().size() - 1).length;
        for (int i = taken + last; i < n; i++) {
            parts.add(new Part(
                    shortened(at.names().get(i), model.seats()), Motion.OCCUPANT, back[i], column(carried, i)));
        }
    }

    /** Who sits there, without where, unless another there has the same name. */
    private static String shortened(String coordinate, List<SeatPlace> seats) {
        for (SeatPlace seat : seats) {
            String full = seat.person() + " on " + seat.name();
            long alike =
                    seats.stream().filter(s -> s.person().equals(seat.person())).count();
            if (coordinate.startsWith(full)) {
                return (alike == 1 ? seat.person() : seat.name()) + coordinate.substring(full.length());
            }
        }
        return coordinate;
    }

    private double[][] unity() {
        double[][] t = new double[n][n];
        for (int i = 0; i < n; i++) {
            t[i][i] = 1;
        }
        return t;
    }

    /** Fills T⁻¹ and T from the seats' rows {@code below − above}, each stage after the one it stands on. */
    private void occupants(VehicleModel model, double[][] back, double[][] carried) {
        for (Element element : model.equations().elements()) {
            int above = element.kind() == Element.Kind.SEAT ? above(element.row()) : -1;
            for (int j = 0; j < n && above >= 0; j++) {
                back[above][j] = -element.row()[j];
            }
            for (int j = 0; j < n && above >= 0; j++) {
                double sum = j == above ? 1 : 0;
                for (int i = 0; i < n; i++) {
                    sum += i == above ? 0 : element.row()[i] * carried[i][j];
                }
                carried[above][j] = sum;
            }
        }
    }

    /** What a seat's spring holds up: the last coordinate of its row. */
    private static int above(double[] row) {
        for (int i = row.length - 1; i >= 0; i--) {
            if (row[i] == -1) {
                return i;
            }
        }
        return -1;
    }

    private static double[] column(double[][] matrix, int j) {
        double[] column = new double[matrix.length];
        for (int i = 0; i < column.length; i++) {
            column[i] = matrix[i][j];
        }
        return column;
    }

    private void addBody(Coordinates at, double[][] back, double[][] carried) {
        add("bounce", Motion.BOUNCE, at.heave(), back, carried);
        add("roll", Motion.ROLL, at.roll(), back, carried);
        add("pitch", Motion.PITCH, at.pitch(), back, carried);
        add("twist of the body", Motion.TWIST, at.twist(), back, carried);
        add("surge", Motion.SURGE, at.surge(), back, carried);
        add("sway", Motion.SWAY, at.sway(), back, carried);
    }

    private void add(String name, Motion motion, int i, double[][] back, double[][] carried) {
        if (i >= 0) {
            parts.add(new Part(name, motion, back[i], column(carried, i)));
        }
    }

    private void addAxle(Axle axle, int[] index, List<String> units, double[][] back, double[][] carried) {
        if (index.length == 1) {
            add(axle.name() + " wheel hop", Motion.HOP, index[0], back, carried);
        } else if (units.get(index[1]).equals("rad")) {
            add(axle.title() + " hop", Motion.HOP, index[0], back, carried);
            add(axle.title() + " tramp", Motion.TRAMP, index[1], back, carried);
        } else {
            double[] left = column(carried, index[0]);
            double[] right = column(carried, index[1]);
            parts.add(new Part(
                    axle.name() + " wheel hop",
                    Motion.HOP,
                    combined(0.5, back[index[0]], 0.5, back[index[1]]),
                    combined(1, left, 1, right)));
            parts.add(new Part(
                    axle.name() + " wheel tramp",
                    Motion.TRAMP,
                    combined(0.5, back[index[0]], -0.5, back[index[1]]),
                    combined(1, left, -1, right)));
        }
    }

    private static double[] combined(double a, double[] x, double b, double[] y) {
        double[] sum = new double[x.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = a * x[i] + b * y[i];
        }
        return sum;
    }

    /** Shares of a mode's energy, greatest first. */
    List<Participation> of(double[] shape) {
        double[] momentum = new double[n];
        double energy = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                momentum[i] += equations.mass(i, j) * shape[j];
            }
            energy += shape[i] * momentum[i];
        }
        List<Participation> shares = new ArrayList<>();
        for (Part part : parts) {
            double amplitude = dot(part.amplitude(), shape);
            double share = amplitude * dot(part.momentum(), momentum) / energy;
            shares.add(new Participation(part.name(), part.motion(), share, amplitude));
        }
        shares.sort(Comparator.comparingDouble(Participation::share).reversed());
        return List.copyOf(shares);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}

package org.ridewright.measurement;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.ridewright.measurement.LogOptions.Forward;

/**
 * How a logger stood in the vehicle, and what is to be taken off its values.
 *
 * <p>An accelerometer at rest reads gravity; over a ride that ends about as fast as it began, so does its mean ḡ. With three axes û = ḡ/|ḡ| is
 * up in the logger's axes and {@code a·û − |ḡ|} the vertical acceleration, upward positive whichever sign the logger gives to
 * gravity. Forward is the stated axis less its vertical part, or the horizontal direction of greatest mean square; left is up × forward. With
 * fewer axes, or with gravity removed, the columns stand as they are marked and lose their means only.
 *
 * @param gravityFound whether gravity was in the values
 * @param mean ḡ along the axes logged (m/s²)
 * @param tilt angle between the logger's z axis and up (°); NaN where it cannot be known
 * @param forwardKnown whether x is forward and y left, rather than some two horizontal directions
 * @param rotation rows: forward, left, up, in the logger's axes
 */
public record Mounting(
        boolean gravityFound, Map<LogAxis, Double> mean, double tilt, boolean forwardKnown, double[][] rotation) {
    /** Standard acceleration of free fall (m/s²). */
    static final double G = 9.80665;

    /** A mean within this of g is gravity (1). */
    private static final double NEAR_G = 0.2;

    /** A mean below this part of g says that gravity was removed. */
    private static final double NEAR_ZERO = 0.05;

    /** A named forward axis must lie this far from the vertical (°). */
    private static final double LEAST_ANGLE = 30;

    /**
     * Tells gravity and the way up from the mean.
     *
     * @throws UnusableLogException if the mean is neither gravity nor nothing, or the forward axis is the vertical one
     */
    static Mounting of(Recording recording, EvenSamples samples, LogOptions options) {
        Map<LogAxis, Double> mean = mean(samples, recording);
        boolean three = mean.size() == LogAxis.values().length;
        double size = three ? norm(vector(mean)) : Math.abs(mean.get(LogAxis.Z));
        boolean gravity =
                switch (options.gravity()) {
                    case INCLUDED -> true;
                    case REMOVED -> false;
                    case FOUND -> isGravity(recording, three, size);
                };
        if (!three) {
            double sign = gravity && mean.get(LogAxis.Z) < 0 ? -1 : 1;
            double tilt = gravity ? Math.toDegrees(Math.acos(Math.min(1, size / G))) : Double.NaN;
            return new Mounting(gravity, mean, tilt, options.forward() == Forward.PLUS_X, new double[][] {
                {1, 0, 0}, {0, 1, 0}, {0, 0, sign}
            });
        }
        double[] up = gravity ? scaled(vector(mean), 1 / size) : new double[] {0, 0, 1};
        double tilt = gravity ? Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, up[2])))) : Double.NaN;
        double[] forward = horizontal(start(options.forward(), samples, mean, up), up);
        double[] left = cross(up, forward);
        return new Mounting(
                gravity, mean, tilt, options.forward() != Forward.UNKNOWN, new double[][] {forward, left, up});
    }

    /** Upright values of a stretch, means taken off: forward, left and up, as far as logged. */
    Map<LogAxis, double[]> upright(Map<LogAxis, double[]> logged) {
        Map<LogAxis, double[]> upright = new EnumMap<>(LogAxis.class);
        for (LogAxis to : logged.keySet()) {
            double[] sum = new double[logged.get(to).length];
            for (LogAxis from : logged.keySet()) {
                double share = rotation[to.place()][from.place()];
                double[] values = logged.get(from);
                double offset = mean.get(from);
                for (int i = 0; share != 0 && i < sum.length; i++) {
                    sum[i] += share * (values[i] - offset);
                }
            }
            upright.put(to, sum);
        }
        return upright;
    }

    private static boolean isGravity(Recording recording, boolean three, double size) {
        if (Math.abs(size / G - 1) <= NEAR_G) {
            return true;
        }
        if (size < NEAR_ZERO * G) {
            return false;
        }
        Recording.Column z = recording.columns().get(LogAxis.Z);
        String likely = likelyUnit(z.unit(), size);
        String what = three ? "mean acceleration of " + number(size) + " m/s²" : "mean of " + number(size) + " m/s²";
        String fix = !likely.isEmpty()
                ? "the values look as if they were in " + likely + ", not in " + z.unit() + ": state --unit " + likely
                : three
                        ? "check --unit; if gravity was only partly removed, state --gravity removed"
                        : "check --unit and that the column is the vertical one; if it is, state --gravity in or --gravity removed";
        throw new UnusableLogException(LogFault.whole(
                three ? "" : z.name(),
                what,
                "is neither gravity nor nothing",
                "about 9.8 m/s² where gravity is in the values, or about 0 where it was removed",
                fix));
    }

    /** Of the units that would make the mean gravity, one that is not the one taken. */
    private static String likelyUnit(String unit, double size) {
        double factor = LogUnit.of(unit).map(LogUnit::factor).orElse(1.0);
        for (LogUnit other : LogUnit.values()) {
            double as = size / factor * other.factor() / G;
            if (!other.word().equals(unit) && other.isUsual() && Math.abs(as - 1) <= NEAR_G / 2) {
                return other.word();
            }
        }
        return "";
    }

    private static Map<LogAxis, Double> mean(EvenSamples samples, Recording recording) {
        Map<LogAxis, Double> mean = new EnumMap<>(LogAxis.class);
        for (LogAxis axis : recording.columns().keySet()) {
            double sum = 0;
            long count = 0;
            for (Map<LogAxis, double[]> stretch : samples.values()) {
                for (double value : stretch.get(axis)) {
                    sum += value;
                }
                count += stretch.get(axis).length;
            }
            mean.put(axis, sum / count);
        }
        return mean;
    }

    private static double[] start(Forward forward, EvenSamples samples, Map<LogAxis, Double> mean, double[] up) {
        if (forward.isAxis()) {
            double[] direction = forward.direction();
            double angle = Math.toDegrees(Math.acos(Math.min(1, Math.abs(dot(direction, up)))));
            if (angle < LEAST_ANGLE) {
                throw new UnusableLogException(LogFault.whole(
                        "",
                        "--forward " + forward.word(),
                        String.format(
                                Locale.ROOT,
                                "names an axis that stood %.0f° from the vertical, as the mean shows",
                                angle),
                        "the axis of the logger that pointed forward, at least 30° from the vertical",
                        "name another axis, or leave --forward out"));
            }
            return direction;
        }
        // the axis that lies flattest will do to begin with
        double[] flattest = new double[3];
        int least = 0;
        for (int i = 1; i < 3; i++) {
            least = Math.abs(up[i]) < Math.abs(up[least]) - 1e-12 ? i : least;
        }
        flattest[least] = 1;
        return forward == Forward.PRINCIPAL ? principal(samples, mean, up, horizontal(flattest, up)) : flattest;
    }

    /** Direction of greatest mean square: half of the angle of (⟨p²⟩ − ⟨q²⟩, 2⟨pq⟩) from p. */
    private static double[] principal(EvenSamples samples, Map<LogAxis, Double> mean, double[] up, double[] p) {
        double[] q = cross(up, p);
        double difference = 0;
        double product = 0;
        for (Map<LogAxis, double[]> stretch : samples.values()) {
            int n = stretch.get(LogAxis.X).length;
            for (int i = 0; i < n; i++) {
                double[] a = new double[3];
                for (LogAxis axis : LogAxis.values()) {
                    a[axis.place()] = stretch.get(axis)[i] - mean.get(axis);
                }
                double along = dot(a, p);
                double across = dot(a, q);
                difference += along * along - across * across;
                product += 2 * along * across;
            }
        }
        double angle = Math.atan2(product, difference) / 2;
        double[] direction = new double[3];
        for (int i = 0; i < 3; i++) {
            direction[i] = Math.cos(angle) * p[i] + Math.sin(angle) * q[i];
        }
        return direction;
    }

    private static double[] horizontal(double[] direction, double[] up) {
        double vertical = dot(direction, up);
        double[] level = new double[3];
        for (int i = 0; i < 3; i++) {
            level[i] = direction[i] - vertical * up[i];
        }
        return scaled(level, 1 / norm(level));
    }

    private static double[] vector(Map<LogAxis, Double> mean) {
        return new double[] {mean.get(LogAxis.X), mean.get(LogAxis.Y), mean.get(LogAxis.Z)};
    }

    private static double[] scaled(double[] v, double factor) {
        return new double[] {factor * v[0], factor * v[1], factor * v[2]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double norm(double[] v) {
        return Math.sqrt(dot(v, v));
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.3g", value);
    }
}

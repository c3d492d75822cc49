package org.ridewright.ride;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.PointMotion;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.signal.Channel;
import org.ridewright.solver.ReferenceSolver;
import org.ridewright.suspension.ForceLaw;

/**
 * One ride by both solvers: coordinates, their speeds and accelerations, what is felt at seats and feet, travels, wheel loads, and the
 * forces of every element without friction, which the reference solver does not hand over.
 *
 * @param worst relative r.m.s. difference of the read-off that differs most
 * @param readOff its name
 * @param peaks greatest difference of a read-off's peak, as a share of it
 * @param levels greatest difference of a read-off's r.m.s., as a share of it
 */
record Agreement(double worst, String readOff, double peaks, double levels) {
    /** About the tolerance of the reference solver (m). */
    static final double NUDGE = 1e-11;

    private static final double TOLERANCE = 1e-12;
    private static final double RATE = 1000;

    static Agreement of(Trial trial) {
        Reader reader = new Reader(trial);
        List<Channel> own = reader.own(trial);
        List<Channel> reference = reader.reference();
        double worst = -1;
        String name = "";
        double peaks = 0;
        double levels = 0;
        for (int i = 0; i < own.size(); i++) {
            double scale = Likeness.scale(own, own.get(i));
            double apart = Likeness.apart(own.get(i), reference.get(i)) / scale;
            if (apart > worst) {
                worst = apart;
                name = own.get(i).name();
            }
            if (Likeness.rms(own.get(i)) == scale) {
                peaks = Math.max(peaks, Math.abs(peak(reference.get(i)) / peak(own.get(i)) - 1));
                levels = Math.max(levels, Math.abs(Likeness.rms(reference.get(i)) / scale - 1));
            }
        }
        return new Agreement(worst, name, peaks, levels);
    }

    /** The same difference between two runs of the regime solver of which one starts {@link #NUDGE} higher. */
    static double sensitivity(Trial trial) {
        Reader reader = new Reader(trial);
        return Likeness.difference(reader.own(trial), reader.own(trial.nudged(NUDGE)));
    }

    /**
     * Whether both solvers part no further than two runs of one solver do, while peaks and levels agree.
     *
     * @param sensitivity of the same ride
     */
    boolean mayPart(double sensitivity) {
        return sensitivity > FleetAgreementTest.AGREED && worst < 1e3 * sensitivity && peaks < 0.05 && levels < 0.15;
    }

    private static double peak(Channel channel) {
        double most = 0;
        for (double x : channel.samples()) {
            most = Math.max(most, Math.abs(x));
        }
        return most;
    }

    /** Makes the same channels from either solver. */
    private static final class Reader {
        private final Trial trial;
        private final VehicleModel model;
        private final List<ReadOff> readOffs = new ArrayList<>();
        private final List<Source> sources = new ArrayList<>();

        /** A read-off from what the reference solver hands over. */
        private interface Source {
            double at(double t, double[] q, double[] v, double[] a);
        }

        Reader(Trial trial) {
            this.trial = trial;
            model = trial.model();
            ReadOffs all = new ReadOffs(model);
            double[] rest = model.rest().q();
            readOffs.addAll(all.coordinates());
            for (int i = 0; i < rest.length; i++) {
                int j = i;
                sources.add((t, q, v, a) -> q[j] - rest[j]);
                sources.add((t, q, v, a) -> v[j]);
                sources.add((t, q, v, a) -> a[j]);
            }
            for (SeatPlace seat : model.seats()) {
                readOffs.addAll(all.seat(seat));
                felt(model.motionAt(seat.seat().place()), seat.rise());
                readOffs.addAll(all.feet(seat));
                PointMotion feet =
                        model.motionAt(seat.seat().feet().orElse(seat.seat().place()));
                felt(feet, feet.rise());
            }
            for (WheelPlace wheel : model.wheels()) {
                readOffs.add(all.wheelLoad(wheel));
                sources.add((t, q, v, a) -> force(wheel.element(), t, q, v));
            }
            for (int e : all.suspensionElements()) {
                readOffs.add(all.travel(e));
                double before = model.rest().compression()[e];
                sources.add((t, q, v, a) -> compression(e, t, q) - before);
                if (model.equations().elements().get(e).law().friction().states() == 0) {
                    readOffs.add(all.force(e));
                    sources.add((t, q, v, a) -> force(e, t, q, v));
                }
            }
        }

        private void felt(PointMotion motion, double[] rise) {
            double[] rest = model.rest().q();
            sources.add((t, q, v, a) -> dot(motion.longitudinal(), a) + tilt(motion.longitudinalTilt(), q, rest));
            sources.add((t, q, v, a) -> dot(motion.lateral(), a) + tilt(motion.lateralTilt(), q, rest));
            sources.add((t, q, v, a) -> dot(rise, a));
        }

        private static double dot(double[] row, double[] x) {
            double sum = 0;
            for (int i = 0; i < row.length; i++) {
                sum += row[i] * x[i];
            }
            return sum;
        }

        private static double tilt(double[] row, double[] q, double[] rest) {
            return dot(row, q) - dot(row, rest);
        }

        private double compression(int e, double t, double[] q) {
            Element element = model.equations().elements().get(e);
            double u = element.input() < 0 ? 0 : height(element).value(t);
            return u + dot(element.row(), q);
        }

        private PiecewisePolynomial height(Element element) {
            return trial.problem().heights().get(element.input()).block(0);
        }

        private double force(int e, double t, double[] q, double[] v) {
            Element element = model.equations().elements().get(e);
            ForceLaw law = element.law();
            double c = compression(e, t, q);
            double speed = dot(element.row(), v)
                    + (element.input() < 0 ? 0 : height(element).derivative(t, 1));
            double f = law.elasticForce(c)
                    + law.damping() * speed
                    + law.speedStages().value(speed);
            return law.pushesOnly() ? (c > 0 ? Math.max(0, f) : 0) : f;
        }

        List<Channel> own(Trial other) {
            SampleRecorder recorder =
                    new SampleRecorder(readOffs, RATE, other.problem().duration());
            other.solve(recorder);
            return recorder.channels().stream().map(Reader::withoutEnd).toList();
        }

        /** The reference solver gives no sample at the very end. */
        private static Channel withoutEnd(Channel channel) {
            return new Channel(
                    channel.name(), channel.unit(), RATE, 0, Arrays.copyOf(channel.samples(), channel.size() - 1));
        }

        List<Channel> reference() {
            int count = (int) Math.floor(trial.problem().duration() * RATE + 1e-9);
            double[][] samples = new double[sources.size()][count];
            int[] taken = {0};
            ReferenceSolver.solve(trial.problem(), TOLERANCE, RATE, (t, q, v, a) -> {
                int i = (int) Math.round(t * RATE);
                if (i < count) {
                    taken[0]++;
                    for (int r = 0; r < samples.length; r++) {
                        samples[r][i] = sources.get(r).at(t, q, v, a);
                    }
                }
            });
            if (taken[0] != count) {
                throw new AssertionError("the reference solver gave " + taken[0] + " samples of " + count);
            }
            List<Channel> channels = new ArrayList<>();
            for (int r = 0; r < samples.length; r++) {
                channels.add(new Channel(readOffs.get(r).name(), readOffs.get(r).unit(), RATE, 0, samples[r]));
            }
            return channels;
        }
    }
}

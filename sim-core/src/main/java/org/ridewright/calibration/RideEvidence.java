package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.fieldwork.LogReference;
import org.ridewright.fieldwork.LogReference.Sensor;
import org.ridewright.fieldwork.MeasuredRide;
import org.ridewright.fieldwork.MeasuredRide.Horse;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.quantity.Spread;
import org.ridewright.ride.RideTrace;
import org.ridewright.ride.SpeedPlan;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.wheel.Ground;

/**
 * Logs of a ride over a known obstacle, sample by sample. Sought besides the vehicle are the speed, within its tolerance, when each log's ride began,
 * and the frequency of a horse's steps; a constant and what the steps add at that frequency and its double are fitted and taken off before residuals
 * count. Residuals are whitened by {@link Scatter}, which is found from those of an earlier fit.
 */
final class RideEvidence implements Evidence {
    /**
     * How far off the best agreement before the fit may lie from the truth (s; our choice): a third of the shortest bounce of a vehicle, 3 Hz, so that the
     * right one of several waves stays within reach, and no more.
     */
    private static final double START = 0.1;
    /** Part of the ride that counts ahead of the first contact and after the last (s). */
    private static final double AHEAD = 0.5;

    private static final double AFTER = 1.5;
    /** Of a road that goes on (s). */
    private static final double LONGEST = 30;
    /**
     * Scatter before anything is known of it, as a share of the log's r.m.s., and its likeness from sample to sample (our choice): half is not explained at first,
     * so that a poor start is not believed too much. The first fit's residuals replace it.
     */
    private static final Scatter FIRST_GUESS = new Scatter(0.5, 0.5);

    /** Least scatter that is believed, as a share of the log's r.m.s. (our choice): what a cheap sensor's scale errs by, common practice. */
    private static final double LEAST = 0.02;

    private final MeasuredRide fact;
    private final Road road;
    private final List<AlignedLog> logs;
    private final List<Scatter> scatters;

    private RideEvidence(MeasuredRide fact, Road road, List<AlignedLog> logs, List<Scatter> scatters) {
        this.fact = fact;
        this.road = road;
        this.logs = logs;
        this.scatters = scatters;
    }

    /**
     * Lays the logs beside the ride as the values before have it.
     *
     * @throws CalibrationException if a log has no stretch as long as the ride
     */
    static RideEvidence of(MeasuredRide fact, Sources sources, Trial before) {
        Road road = sources.roads().apply(fact.road());
        List<AlignedLog> logs = new ArrayList<>();
        List<Scatter> scatters = new ArrayList<>();
        RideTrace ride = ride(fact, road, before, fact.speed().value());
        double from = Math.max(0, ride.firstContact().orElse(0.0) - AHEAD);
        for (int i = 0; i < fact.logs().size(); i++) {
            LogReference reference = fact.logs().get(i);
            Channel simulated = AlignedLog.filtered(ride.vertical().get(i));
            double to = Math.min(simulated.end(), ride.lastContact().orElse(simulated.end()) + AFTER);
            AlignedLog log = AlignedLog.of(
                    sources.recordings().apply(reference), reference.options(), simulated, from, to, fact.label());
            logs.add(log);
            scatters.add(new Scatter(FIRST_GUESS.deviation() * rms(log.values()), FIRST_GUESS.likeness()));
        }
        return new RideEvidence(fact, road, List.copyOf(logs), List.copyOf(scatters));
    }

    private static RideTrace ride(MeasuredRide fact, Road road, Trial trial, double speed) {
        VehicleModel model = VehicleModel.assemble(
                trial.vehicle(),
                fact.load().on(trial.vehicle()),
                new Ground(road.groundRate(), road.groundDamping()),
                false);
        List<RideTrace.Spot> spots = fact.logs().stream()
                .map(log -> new RideTrace.Spot(log.sensor().label(), rise(model, log.sensor())))
                .toList();
        SpeedPlan plan = SpeedPlan.steady(Measure.of(speed, QuantityKind.SPEED));
        return RideTrace.of(model, road, plan, spots, AlignedLog.RATE_OF_RIDE, LONGEST);
    }

    private static double[] rise(VehicleModel model, Sensor sensor) {
        if (sensor instanceof Sensor.OnBody body) {
            return model.motionAt(body.place()).rise();
        } else if (sensor instanceof Sensor.OnAxle axle) {
            List<double[]> rows = model.wheels().stream()
                    .filter(w -> model.vehicle().axles().get(w.axle()).name().equals(axle.axle()))
                    .filter(w ->
                            axle.side().map(side -> side.sign() * w.y() >= 0).orElse(true))
                    .map(w -> wheelRise(model, w))
                    .toList();
            double[] mean = new double[model.coordinates().size()];
            for (double[] row : rows) {
                for (int i = 0; i < mean.length; i++) {
                    mean[i] += row[i] / rows.size();
                }
            }
            return mean;
        }
        String name = ((Sensor.OnSeat) sensor).seat();
        Optional<SeatPlace> seat = model.seats().stream()
                .filter(s -> name.isEmpty() || s.name().equals(name))
                .findFirst();
        return seat.map(SeatPlace::rise)
                .orElseThrow(() -> new CalibrationException("nobody sits on '" + name + "' in load case '"
                        + model.loadCase().name() + "', whose ride was logged there"));
    }

    /** A wheel's contact shortens as it sinks. */
    private static double[] wheelRise(VehicleModel model, WheelPlace wheel) {
        double[] row = model.equations().elements().get(wheel.element()).row().clone();
        for (int i = 0; i < row.length; i++) {
            row[i] = -row[i];
        }
        return row;
    }

    private static double rms(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return Math.sqrt(sum / values.length);
    }

    @Override
    public MeasuredRide fact() {
        return fact;
    }

    /** The record beside the ride, one for each log. */
    List<AlignedLog> logs() {
        return logs;
    }

    List<Scatter> scatters() {
        return scatters;
    }

    @Override
    public List<Datum> data() {
        List<Datum> data = new ArrayList<>();
        for (AlignedLog log : logs) {
            for (int i = 0; i < log.times().length; i++) {
                data.add(new Datum(fact.label() + ", sample " + (i + 1), "", 0, 1, fact.keepBack(), fact.label()));
            }
        }
        return data;
    }

    @Override
    public List<Unknown> circumstances() {
        List<Unknown> list = new ArrayList<>();
        list.add(new Unknown("speed of " + fact.label(), Spread.of(fact.speed()), "tolerance of the measurement"));
        for (AlignedLog log : logs) {
            Measure start = new Measure(QuantityKind.TIME, log.start(), START, Provenance.COMPUTED, "best agreement");
            // a time on a log may be negative: spread normally whatever the kind
            list.add(new Unknown(
                    "beginning of " + fact.label(),
                    new Spread(QuantityKind.TIME, start.value(), START, false),
                    "best agreement with the log, ± 0.1 s"));
        }
        stepFrequency()
                .ifPresent(steps -> list.add(new Unknown(
                        "steps of the horse in " + fact.label(), Spread.of(steps), "tolerance of the measurement")));
        return list;
    }

    private Optional<Measure> stepFrequency() {
        return fact.horse() instanceof Horse.Steps steps ? Optional.of(steps.stepFrequency()) : Optional.empty();
    }

    @Override
    public double[] predict(Trial trial, double[] circumstances) {
        List<double[]> differences = differences(trial, circumstances);
        double[] all = new double[differences.stream().mapToInt(d -> d.length).sum()];
        int next = 0;
        for (int l = 0; l < logs.size(); l++) {
            double[] white = scatters.get(l).whitenedWithout(differences.get(l), additions(l, circumstances));
            System.arraycopy(white, 0, all, next, white.length);
            next += white.length;
        }
        return all;
    }

    private List<double[]> additions(int log, double[] circumstances) {
        double steps = stepFrequency().isPresent() ? circumstances[1 + logs.size()] : Double.NaN;
        return logs.get(log).additions(steps);
    }

    private List<double[]> differences(Trial trial, double[] circumstances) {
        List<double[]> ridden = ridden(trial, circumstances);
        List<double[]> differences = new ArrayList<>();
        for (int l = 0; l < logs.size(); l++) {
            double[] difference = ridden.get(l).clone();
            for (int i = 0; i < difference.length; i++) {
                difference[i] -= logs.get(l).values()[i];
            }
            differences.add(difference);
        }
        return differences;
    }

    /** Simulated acceleration at the instants of each log (m/s²). */
    List<double[]> ridden(Trial trial, double[] circumstances) {
        RideTrace ride = ride(fact, road, trial, circumstances[0]);
        List<double[]> list = new ArrayList<>();
        for (int l = 0; l < logs.size(); l++) {
            Channel simulated = AlignedLog.filtered(ride.vertical().get(l));
            list.add(logs.get(l).ridden(simulated, circumstances[1 + l]));
        }
        return list;
    }

    /** What the constant and the horse add at each instant, by least squares of what the ride leaves (m/s²). */
    List<double[]> added(Trial trial, double[] circumstances) {
        Scatter plain = new Scatter(1, 0);
        List<double[]> differences = differences(trial, circumstances);
        List<double[]> list = new ArrayList<>();
        for (int l = 0; l < logs.size(); l++) {
            double[] rest = plain.whitenedWithout(differences.get(l), additions(l, circumstances));
            double[] added = new double[rest.length];
            for (int i = 0; i < rest.length; i++) {
                added[i] = rest[i] - differences.get(l)[i];
            }
            list.add(added);
        }
        return list;
    }

    /** The same with the scatter that the residuals of a fit show. */
    RideEvidence rescattered(Trial trial, double[] circumstances) {
        Scatter plain = new Scatter(1, 0);
        List<double[]> differences = differences(trial, circumstances);
        List<Scatter> found = new ArrayList<>();
        for (int l = 0; l < logs.size(); l++) {
            double[] rest = plain.whitenedWithout(differences.get(l), additions(l, circumstances));
            found.add(Scatter.of(rest, LEAST * rms(logs.get(l).values())));
        }
        return new RideEvidence(fact, road, logs, List.copyOf(found));
    }
}

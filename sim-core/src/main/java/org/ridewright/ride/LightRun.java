package org.ridewright.ride;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ridewright.comfort.Window;
import org.ridewright.dynamics.Coordinates;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.math.PolynomialRange;
import org.ridewright.road.Road;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** A ride test that is measured and not described: no traces, spectra, wheel paths, comparisons or remarks, only what is wanted. */
final class LightRun {
    private static final RideResult.Peak NONE = new RideResult.Peak(Double.NaN, Double.NaN);
    /** Rate at which the body's swings are followed, far above any of its frequencies (Hz). */
    private static final double SWING_RATE = 250;
    /** Least motion to either side that counts as a swing, as in a bounce test (m or rad). */
    private static final double VISIBLE = 1e-3;

    private final VehicleModel model;
    private final Travel travel;
    private final List<Scenario.Point> points;
    private final Optional<Window> span;
    private final double duration;
    private final double quietFrom;
    /** Whether the road ends before the run does, so that the body can come to rest. */
    private final boolean comesToRest;

    private final ReadOffs readOffs;

    /** @param lastContact when the last wheel leaves the rough road (s), which may be never */
    LightRun(
            VehicleModel model,
            Travel travel,
            List<Scenario.Point> points,
            Optional<Window> span,
            double duration,
            Optional<Double> lastContact) {
        this.model = model;
        this.travel = travel;
        this.points = points;
        this.span = span;
        this.duration = duration;
        quietFrom = lastContact.filter(t -> t < duration).orElse(0.0);
        comesToRest = lastContact.map(t -> t < duration).orElse(true);
        readOffs = new ReadOffs(model);
    }

    Measured measure(
            Set<Wanted> wanted,
            Problem problem,
            String file,
            Road road,
            SpeedPlan plan,
            List<RideResult.AxleTimes> axles,
            RideResult.Span window) {
        List<StepListener> listeners = new ArrayList<>();
        listeners.add(new TiltWatch(model));
        Optional<RangeRecorder> peaks = ranges(wanted, Wanted.PEAKS, accelerations(), listeners);
        Optional<LevelMeter> levels = span.filter(s -> wanted.contains(Wanted.LEVELS))
                .map(s -> new LevelMeter(accelerations(), s.from(), s.to()));
        levels.ifPresent(listeners::add);
        Optional<RangeRecorder> loads = ranges(
                wanted,
                Wanted.WHEEL_LOADS,
                model.wheels().stream().map(readOffs::wheelLoad).toList(),
                listeners);
        Optional<RangeRecorder> travels = ranges(wanted, Wanted.TRAVEL, travels(), listeners);
        Optional<RangeRecorder> draught =
                ranges(wanted, Wanted.DRAUGHT, List.of(new Draught(model.wheels(), travel)), listeners);
        List<FeltMeters> felt = span.filter(s -> wanted.contains(Wanted.SEAT))
                .map(s -> model.seats().stream()
                        .map(seat -> new FeltMeters(seat, readOffs, s, duration, wanted))
                        .toList())
                .orElse(List.of());
        listeners.addAll(felt);
        TimeRecorder times = new TimeRecorder(model.equations(), Optional.empty());
        listeners.add(times);
        Optional<Swings> swings = wanted.contains(Wanted.SWINGS) ? Optional.of(new Swings()) : Optional.empty();
        swings.ifPresent(listeners::add);
        StepListener[] all = listeners.toArray(StepListener[]::new);
        Solution solution = RegimeSolver.solve(problem, step -> {
            for (StepListener listener : all) {
                listener.step(step);
            }
        });
        RideResult result = new RideResult(
                file,
                model,
                road,
                plan,
                duration,
                List.of(),
                List.of(),
                axles,
                window,
                seats(felt, peaks, times),
                points(peaks),
                elements(travels, times, solution),
                wheels(loads, times),
                draught.map(d -> RideTest.greatest(d.range(0))).orElse(NONE),
                Optional.empty(),
                List.of(),
                solution.energy(),
                solution.statistics(),
                List.of(),
                List.of());
        return new Measured(
                result,
                swings.map(Swings::counted).orElse(List.of()),
                levels.map(this::levels).orElse(Map.of()),
                inBands(felt));
    }

    /** Of the vertical ones among {@link #accelerations}. */
    private Map<String, Double> levels(LevelMeter meter) {
        Map<String, Double> levels = new LinkedHashMap<>();
        int next = 0;
        for (SeatPlace seat : model.seats()) {
            levels.put(seat.name(), meter.rms(next++));
        }
        for (Scenario.Point point : points) {
            levels.put(point.name(), meter.rms(next + 2));
            next += 3;
        }
        return levels;
    }

    private List<Measured.InBands> inBands(List<FeltMeters> felt) {
        List<Measured.InBands> all = new ArrayList<>();
        for (int i = 0; i < felt.size(); i++) {
            all.addAll(felt.get(i).inBands(model.seats().get(i).name()));
        }
        return all;
    }

    private static Optional<RangeRecorder> ranges(
            Set<Wanted> wanted, Wanted which, List<? extends ReadOff> of, List<StepListener> listeners) {
        if (!wanted.contains(which) || of.isEmpty()) {
            return Optional.empty();
        }
        RangeRecorder recorder = new RangeRecorder(of);
        listeners.add(recorder);
        return Optional.of(recorder);
    }

    /** Vertical ones of seats, then all three of each point. */
    private List<ReadOff> accelerations() {
        List<ReadOff> list = new ArrayList<>();
        for (SeatPlace seat : model.seats()) {
            list.add(readOffs.seat(seat).get(2));
        }
        for (Scenario.Point point : points) {
            list.addAll(readOffs.point(point.name(), point.place()).subList(0, 3));
        }
        return list;
    }

    /** Travel and force of each element in turn. */
    private List<ReadOff> travels() {
        List<ReadOff> list = new ArrayList<>();
        for (int e : readOffs.suspensionElements()) {
            list.add(readOffs.travel(e));
            list.add(readOffs.force(e));
        }
        return list;
    }

    private List<RideResult.SeatResult> seats(
            List<FeltMeters> felt, Optional<RangeRecorder> peaks, TimeRecorder times) {
        List<RideResult.SeatResult> seats = new ArrayList<>();
        for (int i = 0; i < model.seats().size(); i++) {
            SeatPlace seat = model.seats().get(i);
            int at = i;
            Optional<FeltMeters> meters = felt.isEmpty() ? Optional.empty() : Optional.of(felt.get(i));
            Optional<PolynomialRange> vertical = peaks.map(p -> p.range(at));
            seats.add(new RideResult.SeatResult(
                    seat.name(),
                    seat.person(),
                    vertical.map(RideTest::greatest).orElse(NONE),
                    vertical.map(RideTest::least).orElse(NONE),
                    meters.map(FeltMeters::person),
                    meters.flatMap(FeltMeters::effectiveness),
                    meters.flatMap(FeltMeters::sickness),
                    seat.element() >= 0 ? times.off(seat.element()) : 0));
        }
        return seats;
    }

    private List<RideResult.PointResult> points(Optional<RangeRecorder> peaks) {
        List<RideResult.PointResult> results = new ArrayList<>();
        int next = model.seats().size();
        for (Scenario.Point point : points) {
            int at = next;
            Optional<PolynomialRange> vertical = peaks.map(p -> p.range(at + 2));
            results.add(new RideResult.PointResult(
                    point.name(),
                    vertical.map(RideTest::greatest).orElse(NONE),
                    vertical.map(RideTest::least).orElse(NONE),
                    peaks.map(p -> RideTest.furthest(p.range(at))).orElse(NONE),
                    peaks.map(p -> RideTest.furthest(p.range(at + 1))).orElse(NONE)));
            next += 3;
        }
        return results;
    }

    private List<RideResult.ElementResult> elements(
            Optional<RangeRecorder> travels, TimeRecorder times, Solution solution) {
        List<RideResult.ElementResult> results = new ArrayList<>();
        int next = 0;
        for (int e : readOffs.suspensionElements()) {
            Element element = model.equations().elements().get(e);
            int at = next;
            Optional<PolynomialRange> way = travels.map(t -> t.range(at));
            Optional<PolynomialRange> force = travels.map(t -> t.range(at + 1));
            results.add(new RideResult.ElementResult(
                    element.name(),
                    RideTest.kind(element.kind()),
                    model.rest().compression()[e],
                    model.rest().force()[e],
                    way.map(r -> Math.max(0, r.greatest())).orElse(Double.NaN),
                    way.map(r -> Math.max(0, -r.least())).orElse(Double.NaN),
                    force.map(PolynomialRange::greatest).orElse(Double.NaN),
                    force.map(PolynomialRange::least).orElse(Double.NaN),
                    solution.energy().dissipatedByElement()[e],
                    times.locked(e) / duration));
            next += 2;
        }
        return results;
    }

    private List<RideResult.WheelResult> wheels(Optional<RangeRecorder> loads, TimeRecorder times) {
        List<RideResult.WheelResult> results = new ArrayList<>();
        for (int w = 0; w < model.wheels().size(); w++) {
            WheelPlace wheel = model.wheels().get(w);
            int at = w;
            results.add(new RideResult.WheelResult(
                    wheel.name(),
                    model.rest().force()[wheel.element()],
                    loads.map(l -> RideTest.load(RideTest.least(l.range(at)))).orElse(NONE),
                    loads.map(l -> RideTest.load(RideTest.greatest(l.range(at))))
                            .orElse(NONE),
                    times.off(wheel.element())));
        }
        return results;
    }

    /** Heave, roll and pitch of the body, followed at an even rate. */
    private final class Swings implements StepListener {
        private final List<String> names = new ArrayList<>();
        private final List<String> units = new ArrayList<>();
        private final List<SwingCounter> counters = new ArrayList<>();
        private final EvenSampler sampler;
        private final SlideWatch slides = new SlideWatch(model.equations());
        private long next;

        Swings() {
            List<ReadOff> followed = new ArrayList<>();
            Coordinates coordinates = model.coordinates();
            add("heave", coordinates.heave(), followed);
            add("roll", coordinates.roll(), followed);
            add("pitch", coordinates.pitch(), followed);
            sampler = new EvenSampler(followed, SWING_RATE, duration, this::accept);
        }

        private void add(String name, int coordinate, List<ReadOff> followed) {
            if (coordinate < 0) {
                return;
            }
            String unit = model.coordinates().units().get(coordinate);
            names.add(name);
            units.add(unit);
            counters.add(new SwingCounter(VISIBLE, quietFrom, duration));
            followed.add(LinearReadOff.named(name, unit)
                    .plus(LinearReadOff.Source.DISPLACEMENT, coordinate, 1)
                    .less(model.rest().q()[coordinate])
                    .build());
        }

        @Override
        public void step(Step step) {
            slides.begin(step);
            sampler.step(step);
            slides.end(step);
        }

        private void accept(double[] values) {
            double t = next / SWING_RATE;
            next++;
            for (int i = 0; i < values.length; i++) {
                counters.get(i).accept(t, values[i], slides.until(t));
            }
        }

        List<Measured.Swing> counted() {
            List<Measured.Swing> all = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                SwingCounter counter = counters.get(i);
                double cycles = comesToRest ? counter.cycles() : Double.NaN;
                all.add(new Measured.Swing(
                        names.get(i), units.get(i), counter.greatest(), counter.after(), cycles, counter.leftHeld()));
            }
            return all;
        }
    }
}

package org.ridewright.ride;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.ridewright.comfort.Window;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.StaticState;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.PolynomialRange;
import org.ridewright.quantity.Measure;
import org.ridewright.math.PolynomialBlocks;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Problem;
import org.ridewright.solver.ReferenceSolver;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.wheel.Contact;

/**
 * One vehicle, load case, road and speed.
 *
 * <p>The vehicle starts at rest with its front axle at station 0. Metrics are taken from the first contact with an obstacle to 2 s after the
 * last axle has left the last one, over the whole run on a road without obstacles. Comfort metrics are worked out from 2000 samples
 * a second whatever the rate of the traces; extremes are those of the polynomials.
 */
final class RideTest {
    private static final double REFERENCE_TOLERANCE = 1e-11;
    /** A coordinate that moves by a smaller share of the one that moves most stirs by round-off. */
    private static final double LEAST_SHARE = 1e-9;

    /** Time after the last axle that belongs to the window (s). */
    private static final double AFTER_LAST_AXLE = 2;
    /** Time after the last axle that a run of no stated duration goes on (s). */
    private static final double RUN_OUT = 3;

    private static final double FLAT_DURATION = 5;
    /** Longest stretch of a wheel path that is kept (s). */
    private static final double LONGEST_PATH = 20;

    /** Room behind the window that a weighting filter looks ahead (s). */
    private static final double LOOK_AHEAD = 0.02;

    private final Scenario scenario;
    private final String file;
    private final VehicleModel model;
    private final Road road;
    private final SpeedPlan plan;
    private final Travel travel;
    private final Heights heights;
    private final List<RideResult.AxleTimes> axles;
    private final double duration;
    private final RideResult.Span window;
    /** What wheels follow where another test has worked it out; empty: this one does. */
    private final List<PolynomialBlocks> followed;

    RideTest(Scenario scenario, String file, VehicleModel model, Road road, SpeedPlan plan) {
        this.scenario = scenario;
        this.file = file;
        this.model = model.settled(settled(scenario.start()));
        this.road = road;
        this.plan = plan;
        travel = new Travel(plan);
        heights = new Heights(this.model, road, travel);
        axles = heights.axleTimes();
        duration = duration();
        double from = Heights.firstContact(axles).filter(t -> t < duration).orElse(0.0);
        double to = Heights.lastContact(axles).map(t -> t + AFTER_LAST_AXLE).orElse(duration);
        window = new RideResult.Span(from, Math.min(to, Math.max(from + 1e-3, duration - LOOK_AHEAD)));
        followed = List.of();
    }

    /** The same ride of a vehicle that differs from another one in the laws of its springs and dampers alone. */
    private RideTest(RideTest other, VehicleModel alike, List<PolynomialBlocks> followed) {
        scenario = other.scenario;
        file = other.file;
        model = alike.settled(settled(scenario.start()));
        road = other.road;
        plan = other.plan;
        travel = other.travel;
        heights = other.heights;
        axles = other.axles;
        duration = other.duration;
        window = other.window;
        this.followed = List.copyOf(followed);
    }

    /** What every input follows, kept once it has been worked out. */
    List<PolynomialBlocks> followed() {
        return heights.all(duration).stream()
                .map(KeptBlocks::new)
                .map(PolynomialBlocks.class::cast)
                .toList();
    }

    /** This ride with another vehicle, which differs in the laws of its springs and dampers alone. */
    RideTest with(VehicleModel alike, List<PolynomialBlocks> whatIsFollowed) {
        return new RideTest(this, alike, whatIsFollowed);
    }

    /** Weighted vertical vibration at seats or points, and how long friction holds, from an instant to the end. */
    SteadyRide steady(double from) {
        SteadyMeter meter = new SteadyMeter(model, points(), new Window(from, duration - LOOK_AHEAD), duration);
        TiltWatch tilt = new TiltWatch(model);
        RegimeSolver.solve(problem(), step -> {
            tilt.step(step);
            meter.step(step);
        });
        return meter.result();
    }

    private double duration() {
        if (scenario.distance().isPresent()) {
            return travel.time(scenario.distance().get().value());
        }
        return scenario.duration()
                .map(Measure::value)
                .orElseGet(
                        () -> Heights.lastContact(axles).map(t -> t + RUN_OUT).orElse(FLAT_DURATION));
    }

    /** Points named for this vehicle; its centre of mass where nobody is aboard and none is named. */
    private List<Scenario.Point> points() {
        List<Scenario.Point> named = scenario.points().stream()
                .filter(p ->
                        p.vehicle().map(v -> v.equals(model.vehicle().name())).orElse(true))
                .toList();
        return named.isEmpty() && model.seats().isEmpty()
                ? List.of(new Scenario.Point("centre of mass", Optional.empty(), model.centreOfMass()))
                : named;
    }

    /** Only what is wanted of the run, for those who ride many; the rest of the result is empty or not a number. */
    Measured measure(Set<Wanted> wanted) {
        return new LightRun(model, travel, points(), span(), duration, Heights.lastContact(axles))
                .measure(wanted, problem(), file, road, plan, axles, window);
    }

    RideResult run() {
        ReadOffs readOffs = new ReadOffs(model);
        List<Scenario.Point> points = points();
        List<ReadOff> traced = readOffs.traces(points, travel);
        TraceKeeper traces = new TraceKeeper(
                traced, judges(traced, points), scenario.samplingRate().value(), duration);
        List<FeltMeters> felt = span().map(span -> model.seats().stream()
                        .map(seat -> new FeltMeters(seat, readOffs, span, duration))
                        .toList())
                .orElse(List.of());
        List<PathOfVibration> ways = span().map(span -> PathOfVibration.of(model, points, span, duration))
                .orElse(List.of());
        RangeRecorder ranges = new RangeRecorder(ranged(readOffs, points));
        TimeRecorder times = new TimeRecorder(model.equations(), Optional.of(new Draught(model.wheels(), travel)));
        TiltWatch tilt = new TiltWatch(model);
        Optional<FreerRun> freer = freerRun(points);
        Solution solution = RegimeSolver.solve(problem(), step -> {
            tilt.step(step);
            traces.step(step);
            felt.forEach(f -> f.step(step));
            ways.forEach(way -> way.step(step));
            ranges.step(step);
            times.step(step);
            freer.ifPresent(f -> f.own().step(step));
        });
        List<Missed> missed = freer.map(f -> f.run(road, travel, scenario.braked(), settled(scenario.start())))
                .orElse(List.of());
        return result(points, traces.channels(), felt, ways, ranges, times, solution, missed);
    }

    /** On rough roads, where somebody or something is read off. */
    private Optional<FreerRun> freerRun(List<Scenario.Point> points) {
        boolean lacks = !FreerRun.lacking(model, scenario.braked()).isEmpty();
        boolean readOff = !model.seats().isEmpty() || !points.isEmpty();
        return lacks && readOff && !axles.isEmpty()
                ? Optional.of(new FreerRun(model, points, window, duration))
                : Optional.empty();
    }

    /** Window of the metrics, 1 s long at least; none of a run that is too short for one. */
    private Optional<Window> span() {
        Window span = new Window(window.from(), Math.max(window.to(), window.from() + 1));
        return span.to() <= duration ? Optional.of(span) : Optional.empty();
    }

    /** Vertical accelerations at seats, or at points where nobody is aboard. */
    private int[] judges(List<ReadOff> traced, List<Scenario.Point> points) {
        Set<String> places = new HashSet<>();
        model.seats().forEach(seat -> places.add(seat.name() + " seat vertical acceleration"));
        if (places.isEmpty()) {
            points.forEach(point -> places.add(point.name() + " vertical acceleration"));
        }
        return IntStream.range(0, traced.size())
                .filter(i -> places.contains(traced.get(i).name()))
                .toArray();
    }

    /**
     * The same problem by the reference solver.
     *
     * @return greatest over the coordinates of the r.m.s. difference of accelerations over their r.m.s., of which a billionth of the
     *     greatest is the least; infinite where only this solver moves, NaN where there is nothing to compare
     */
    double differenceFromReference() {
        int count = model.coordinates().size();
        double rate = scenario.samplingRate().value();
        SampleRecorder recorder = new SampleRecorder(new ReadOffs(model).coordinates(), rate, duration);
        Problem problem = problem();
        RegimeSolver.solve(problem, recorder);
        List<Channel> channels = recorder.channels();
        double[] error = new double[count];
        double[] whole = new double[count];
        int[] samples = {0};
        ReferenceSolver.solve(problem, REFERENCE_TOLERANCE, rate, (t, q, v, a) -> {
            int i = (int) Math.round(t * rate);
            samples[0]++;
            for (int j = 0; j < count; j++) {
                double own = channels.get(3 * j + 2).sample(i);
                error[j] += (own - a[j]) * (own - a[j]);
                whole[j] += a[j] * a[j];
            }
        });
        double least = LEAST_SHARE * LEAST_SHARE * Arrays.stream(whole).max().orElse(Double.NaN);
        double worst = samples[0] > 0 ? 0 : Double.NaN;
        for (int j = 0; j < count; j++) {
            worst = Math.max(worst, error[j] == 0 ? 0 : Math.sqrt(error[j] / Math.max(least, whole[j])));
        }
        return worst;
    }

    /** Vehicle, load, road and speed. */
    String name() {
        return String.join(", ", model.vehicle().name(), model.loadCase().name(), road.name(), plan.title());
    }

    private Problem problem() {
        StaticState start = model.rest();
        return new Problem(
                model.equations(),
                followed.isEmpty() ? heights.all(duration) : followed,
                start.q(),
                new double[model.equations().size()],
                start.friction(),
                duration);
    }

    private static int settled(Scenario.Start start) {
        return switch (start) {
            case UNSTRESSED -> 0;
            case FROM_ABOVE -> 1;
            case FROM_BELOW -> -1;
        };
    }

    /** Read-offs whose extremes are wanted: seats, points, wheel loads, travels and forces, draught. */
    private List<ReadOff> ranged(ReadOffs readOffs, List<Scenario.Point> points) {
        List<ReadOff> list = new ArrayList<>();
        for (SeatPlace seat : model.seats()) {
            list.add(readOffs.seat(seat).get(2));
        }
        for (Scenario.Point point : points) {
            list.addAll(readOffs.point(point.name(), point.place()).subList(0, 3));
        }
        for (WheelPlace wheel : model.wheels()) {
            list.add(readOffs.wheelLoad(wheel));
        }
        for (int e : readOffs.suspensionElements()) {
            list.add(readOffs.travel(e));
            list.add(readOffs.force(e));
        }
        list.add(new Draught(model.wheels(), travel));
        readOffs.speedGained().ifPresent(list::add);
        return list;
    }

    private RideResult result(
            List<Scenario.Point> points,
            List<Channel> traces,
            List<FeltMeters> felt,
            List<PathOfVibration> ways,
            RangeRecorder ranges,
            TimeRecorder times,
            Solution solution,
            List<Missed> missed) {
        int next = 0;
        List<RideResult.SeatResult> seats = new ArrayList<>();
        for (int i = 0; i < model.seats().size(); i++) {
            seats.add(seat(i, felt, ranges.range(next++), times));
        }
        List<RideResult.PointResult> pointResults = new ArrayList<>();
        for (Scenario.Point point : points) {
            RideResult.Peak forward = furthest(ranges.range(next++));
            RideResult.Peak aside = furthest(ranges.range(next++));
            PolynomialRange range = ranges.range(next++);
            pointResults.add(new RideResult.PointResult(point.name(), greatest(range), least(range), forward, aside));
        }
        List<RideResult.WheelResult> wheels = new ArrayList<>();
        for (WheelPlace wheel : model.wheels()) {
            PolynomialRange range = ranges.range(next++);
            wheels.add(new RideResult.WheelResult(
                    wheel.name(),
                    model.rest().force()[wheel.element()],
                    load(least(range)),
                    load(greatest(range)),
                    times.off(wheel.element())));
        }
        List<RideResult.ElementResult> elements = new ArrayList<>();
        for (int e : new ReadOffs(model).suspensionElements()) {
            elements.add(element(e, ranges.range(next++), ranges.range(next++), times, solution));
        }
        RideResult.Peak draught = greatest(ranges.range(next++));
        Optional<RideResult.Peak> speedGained =
                model.coordinates().surge() >= 0 ? Optional.of(furthest(ranges.range(next))) : Optional.empty();
        List<String> remarks = new Remarks(scenario, model, road, plan)
                .of(seats, wheels, times, liveliness(points, ranges, wheels), speedGained, missed);
        return new RideResult(
                file,
                model,
                road,
                plan,
                duration,
                traces,
                paths(traces),
                axles,
                window,
                seats,
                pointResults,
                elements,
                wheels,
                draught,
                speedGained,
                missed,
                solution.energy(),
                solution.statistics(),
                ways.stream().map(PathOfVibration::spectra).toList(),
                remarks);
    }

    /** The same run with calmer contacts, where lively ones left the ground. */
    private Optional<Liveliness> liveliness(
            List<Scenario.Point> points, RangeRecorder ranges, List<RideResult.WheelResult> wheels) {
        boolean lively = false;
        for (int w = 0; w < wheels.size(); w++) {
            Contact contact = model.wheels().get(w).contact();
            lively |= wheels.get(w).timeOff() > 0 && contact.isLively() && contact.damping() > 0;
        }
        if (!lively || (model.seats().isEmpty() && points.isEmpty())) {
            return Optional.empty();
        }
        ReadOffs readOffs = new ReadOffs(model);
        ReadOff first = model.seats().isEmpty()
                ? readOffs.point(points.get(0).name(), points.get(0).place()).get(2)
                : readOffs.seat(model.seats().get(0)).get(2);
        String place = model.seats().isEmpty()
                ? points.get(0).name()
                : model.seats().get(0).name();
        return Optional.of(Liveliness.of(
                problem(), model.wheels(), first, place, ranges.range(0).greatestSize()));
    }

    /** Wheel paths, of a long road while traces were kept. */
    private List<PiecewisePolynomial> paths(List<Channel> traces) {
        double from = traces.get(0).start();
        return heights.paths(from, Math.min(traces.get(0).end(), from + LONGEST_PATH));
    }

    private RideResult.SeatResult seat(
            int number, List<FeltMeters> meters, PolynomialRange vertical, TimeRecorder times) {
        Optional<FeltMeters> felt = meters.isEmpty() ? Optional.empty() : Optional.of(meters.get(number));
        SeatPlace seat = model.seats().get(number);
        return new RideResult.SeatResult(
                seat.name(),
                seat.person(),
                greatest(vertical),
                least(vertical),
                felt.map(FeltMeters::person),
                felt.flatMap(FeltMeters::effectiveness),
                felt.flatMap(FeltMeters::sickness),
                seat.element() >= 0 ? times.off(seat.element()) : 0);
    }

    private RideResult.ElementResult element(
            int e, PolynomialRange travel, PolynomialRange force, TimeRecorder times, Solution solution) {
        Element element = model.equations().elements().get(e);
        return new RideResult.ElementResult(
                element.name(),
                kind(element.kind()),
                model.rest().compression()[e],
                model.rest().force()[e],
                Math.max(0, travel.greatest()),
                Math.max(0, -travel.least()),
                force.greatest(),
                force.least(),
                solution.energy().dissipatedByElement()[e],
                times.locked(e) / duration);
    }

    static String kind(Element.Kind kind) {
        return switch (kind) {
            case SPRING, LINKAGE -> "spring";
            case DAMPER -> "damper";
            case ANTI_ROLL_BAR -> "anti-roll bar";
            case TWIST -> "twist";
            case SEAT -> "seat";
            case HITCH -> "hitch";
            case HOLD -> "held fore and aft";
            case SWAY -> "sway";
            case CONTACT -> "contact";
        };
    }

    /** A contact only pushes; what lies below zero is the round-off at which it is switched. */
    static RideResult.Peak load(RideResult.Peak peak) {
        return new RideResult.Peak(Math.max(0, peak.value()), peak.at());
    }

    static RideResult.Peak greatest(PolynomialRange range) {
        return new RideResult.Peak(range.greatest(), range.greatestAt());
    }

    /** The extreme that is farther from zero. */
    static RideResult.Peak furthest(PolynomialRange range) {
        return range.greatest() >= -range.least() ? greatest(range) : least(range);
    }

    static RideResult.Peak least(PolynomialRange range) {
        return new RideResult.Peak(range.least(), range.leastAt());
    }
}

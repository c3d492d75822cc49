package org.ridewright.dynamics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.GappedStage;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/** A vehicle under one load case as equations of motion, with the places where it is read off; immutable. */
public final class VehicleModel {
    /** Standard acceleration of free fall (m/s²), exact by definition (CGPM 1901). */
    public static final double GRAVITY = 9.80665;

    /** What models of occupants call it. */
    private static final String HEAD = "head";

    /** No spring of a vehicle gives more standing still (m). */
    private static final double GREATEST_COMPRESSION = 1.0;
    /** Beyond this angles are not small any more: the sine is off by 0.7 % (rad). */
    private static final double GREATEST_TILT = 0.2;
    /** Clearances measured at one another's load cases are found by turns. */
    private static final int MOST_PASSES = 60;
    /** By how much a hitch is raised to see which way the vehicle turns (m). */
    private static final double FIRST_LIFT = 0.01;
    /** As level as round-off allows (rad). */
    private static final double LEVEL = 1e-12;

    private final Vehicle vehicle;
    private final LoadCase loadCase;
    private final LoadedBody body;
    private final Coordinates coordinates;
    private final Geometry geometry;
    private final MassAssembly masses;
    private final Equations equations;
    private final List<WheelPlace> wheels;
    private final List<SeatPlace> seats;
    private final StaticState rest;
    private final Map<String, List<String>> stageNames;

    private VehicleModel(Vehicle vehicle, LoadCase loadCase, Ground ground, boolean braked, StagePlaces places) {
        this.vehicle = vehicle;
        this.loadCase = loadCase;
        body = LoadedBody.of(vehicle, loadCase);
        coordinates = new Coordinates(vehicle, sprung(body), braked);
        geometry = new Geometry(vehicle, coordinates, body);
        masses = new MassAssembly(vehicle, coordinates, geometry, body, braked);
        ElementAssembly elements = new ElementAssembly(vehicle, coordinates, geometry, places);
        elements.build(body, ground);
        HorizontalAssembly horizontal = new HorizontalAssembly(vehicle, coordinates, geometry, masses);
        elements.elements().addAll(horizontal.elements());
        equations = horizontal.withPushes(
                masses.equations(elements.elements(), elements.inputs() + horizontal.inputs()), elements.inputs());
        wheels = List.copyOf(elements.wheels());
        stageNames = elements.stageNames();
        seats = seatPlaces();
        rest = StaticEquilibrium.solve(equations, new double[equations.inputs()], 0);
    }

    private VehicleModel(VehicleModel other, Equations equations, StaticState rest) {
        vehicle = other.vehicle;
        loadCase = other.loadCase;
        body = other.body;
        coordinates = other.coordinates;
        geometry = other.geometry;
        masses = other.masses;
        this.equations = equations;
        wheels = other.wheels;
        stageNames = other.stageNames;
        seats = other.seats;
        this.rest = rest;
    }

    /**
     * The same vehicle, standing as its friction holds it.
     *
     * @param settled +1 if it settled from above, −1 from below, 0 without friction held
     * @throws RideException if no such position of rest is found
     */
    public VehicleModel settled(int settled) {
        return settled == 0
                ? this
                : new VehicleModel(
                        this, equations, StaticEquilibrium.solve(equations, new double[equations.inputs()], settled));
    }

    /**
     * The same vehicle with other force laws, standing with its friction unstressed; {@link #vehicle} still describes the laws that were.
     *
     * @param change gives each element with the law that it is to have; name, kind and row have to stay
     * @throws RideException if no position of rest is found
     */
    public VehicleModel withLaws(UnaryOperator<Element> change) {
        Equations changed =
                equations.withElements(equations.elements().stream().map(change).toList());
        return new VehicleModel(this, changed, StaticEquilibrium.solve(changed, new double[changed.inputs()], 0));
    }

    /** As the other, on ground of which at most the rate is stated (N/m). */
    public static VehicleModel assemble(
            Vehicle vehicle, LoadCase loadCase, Optional<Measure> groundRate, boolean braked) {
        return assemble(vehicle, loadCase, new Ground(groundRate, Optional.empty()), braked);
    }

    /**
     * Assembles the equations for one load case and finds its position of rest.
     *
     * @param ground under the wheels
     * @param braked whether the wheels are held by the brake, which changes what the body pitches about
     * @throws RideException if the vehicle cannot stand as described
     */
    public static VehicleModel assemble(Vehicle vehicle, LoadCase loadCase, Ground ground, boolean braked) {
        try {
            VehicleModel model = new VehicleModel(vehicle, loadCase, ground, braked, stagePlaces(vehicle));
            model.checkRest();
            return model;
        } catch (IllegalArgumentException e) {
            throw new RideException("'" + vehicle.name() + "', load case '" + loadCase.name() + "': " + e.getMessage());
        }
    }

    /** Clearances measured at load cases, found by standing each such load case with its own stages open. */
    private static StagePlaces stagePlaces(Vehicle vehicle) {
        StagePlaces places = new StagePlaces();
        List<String> measured = measuredLoadCases(vehicle);
        Optional<LoadCase> level = levelLoadCase(vehicle);
        String mover = "";
        for (int pass = 0; pass < MOST_PASSES && !(measured.isEmpty() && level.isEmpty()); pass++) {
            double moved = level.isPresent() ? levelHitches(vehicle, level.get(), places) : 0;
            mover = "";
            for (String name : measured) {
                LoadCase load = vehicle.loadCase(name)
                        .orElseThrow(() -> new IllegalArgumentException("no load case named '" + name + "'"));
                VehicleModel standing = new VehicleModel(vehicle, load, Ground.UNYIELDING, false, places);
                for (int e = 0; e < standing.equations.elements().size(); e++) {
                    String element = standing.equations.elements().get(e).name();
                    double by = places.put(name, element, standing.rest.compression()[e]);
                    if (by > moved && !standing.stageNames(element).isEmpty()) {
                        mover = element;
                    }
                    moved = Math.max(moved, by);
                }
            }
            if (moved < 1e-12) {
                return places;
            }
        }
        // a spring far too soft shows itself so too: what the vehicle does on its springs alone tells
        for (String name : measured) {
            LoadCase load = vehicle.loadCase(name).orElseThrow();
            new VehicleModel(vehicle, load, Ground.UNYIELDING, false, new StagePlaces()).checkRest();
        }
        if (!measured.isEmpty()) {
            throw RideException.at(
                    mover,
                    "the clearances measured with load aboard contradict one another: "
                            + "no position of the helpers and stops fits all of them");
        }
        return places;
    }

    private static Optional<LoadCase> levelLoadCase(Vehicle vehicle) {
        return vehicle.hitches().stream()
                .flatMap(h -> h.levelWith().stream())
                .findFirst()
                .map(name -> vehicle.loadCase(name)
                        .orElseThrow(() -> new IllegalArgumentException("no load case named '" + name + "'")));
    }

    /**
     * Finds how high hitches are held for a body that does not pitch, by the secant of pitch over height: straight within one piece of the
     * springs, so that it ends in a few steps.
     *
     * @return by how much that height moved (m)
     */
    private static double levelHitches(Vehicle vehicle, LoadCase load, StagePlaces places) {
        double before = places.hitchHeight();
        double low = before;
        double lowPitch = pitch(vehicle, load, places, low);
        double high = before + FIRST_LIFT;
        for (int step = 0; step < MOST_PASSES && Math.abs(lowPitch) > LEVEL; step++) {
            double highPitch = pitch(vehicle, load, places, high);
            if (Math.abs(highPitch - lowPitch) < LEVEL * LEVEL) {
                throw new IllegalArgumentException("no height of the hitch makes the vehicle level with '" + load.name()
                        + "' aboard: it does not turn about its springs when the hitch is raised");
            }
            double next = high - highPitch * (high - low) / (highPitch - lowPitch);
            low = high;
            lowPitch = highPitch;
            high = next;
        }
        if (Math.abs(lowPitch) > LEVEL) {
            throw new IllegalArgumentException(
                    "no height of the hitch makes the vehicle level with '" + load.name() + "' aboard");
        }
        places.holdHitches(low);
        return Math.abs(low - before);
    }

    private static double pitch(Vehicle vehicle, LoadCase load, StagePlaces places, double height) {
        places.holdHitches(height);
        VehicleModel standing = new VehicleModel(vehicle, load, Ground.UNYIELDING, false, places);
        return standing.rest.q()[standing.coordinates.pitch()];
    }

    private static List<String> measuredLoadCases(Vehicle vehicle) {
        List<GappedStage> stages = new ArrayList<>();
        vehicle.axles().stream()
                .flatMap(a -> a.springs().stream())
                .map(Spring::stages)
                .forEach(stages::addAll);
        for (var connection : vehicle.connections()) {
            if (connection instanceof Connection.SideSpring side) {
                side.tips().forEach(t -> stages.addAll(t.stages()));
            } else if (connection instanceof Connection.Interconnection sum) {
                stages.addAll(sum.stages());
            }
        }
        return stages.stream().flatMap(s -> s.measuredAt().stream()).distinct().toList();
    }

    private void checkRest() {
        // The free state of an enclosed gas lies far above where the vehicle stands: its compression says nothing, nor,
        // where one axle
        // has gas, the attitude that is counted from there.
        boolean gas = equations.elements().stream().anyMatch(e -> e.law().gas().isPresent());
        for (int i : new int[] {coordinates.roll(), coordinates.pitch()}) {
            if (!gas && i >= 0 && Math.abs(rest.q()[i]) > GREATEST_TILT) {
                throw RideException.tooSoft(String.format(
                        Locale.ROOT,
                        "'%s', load case '%s': standing still, %s is %.3g rad; expected at most %.1f rad. "
                                + "Check the springs' rates and where the load lies",
                        vehicle.name(),
                        loadCase.name(),
                        coordinates.names().get(i),
                        rest.q()[i],
                        GREATEST_TILT));
            }
        }
        Optional<Element> lowest = mostCompressed();
        if (lowest.isPresent() && compression(lowest.get()) > GREATEST_COMPRESSION) {
            throw RideException.tooSoft(
                    lowest.get().name(),
                    String.format(
                            Locale.ROOT,
                            "'%s', load case '%s': the vehicle falls through its springs: '%s' is compressed by %.2f m standing "
                                    + "still; expected at most %.1f m. Check its rate and its unit",
                            vehicle.name(),
                            loadCase.name(),
                            lowest.get().name(),
                            compression(lowest.get()),
                            GREATEST_COMPRESSION));
        }
    }

    /** The spring that yields most standing still; a gas is excused, whose free state lies far above. */
    private Optional<Element> mostCompressed() {
        return equations.elements().stream()
                .filter(e -> e.kind() == Element.Kind.SPRING && e.law().gas().isEmpty())
                .max(Comparator.comparingDouble(this::compression));
    }

    private double compression(Element element) {
        return rest.compression()[equations.elements().indexOf(element)];
    }

    static List<Occupant> sprung(LoadedBody body) {
        return body.occupants().stream().filter(Occupant::sprung).toList();
    }

    private List<SeatPlace> seatPlaces() {
        List<SeatPlace> result = new ArrayList<>();
        List<Occupant> sprung = sprung(body);
        for (Occupant occupant : body.occupants()) {
            Place place = occupant.seat().place();
            if (occupant.cushion() < 0) {
                result.add(new SeatPlace(
                        occupant.person(),
                        occupant.seat(),
                        geometry.bodyRise(place.x(), place.y()),
                        -1,
                        head(occupant, sprung)));
                continue;
            }
            int stage = occupant.cushion();
            double[] row = geometry.unit(coordinates.occupant(sprung.indexOf(occupant))[stage]);
            int element = -1;
            for (int e = 0; e < equations.elements().size(); e++) {
                Element candidate = equations.elements().get(e);
                if (candidate.kind() == Element.Kind.SEAT
                        && candidate.law().pushesOnly()
                        && candidate.name().startsWith(occupant.seat().name())
                        && candidate.row()[coordinates.occupant(sprung.indexOf(occupant))[stage]] == -1) {
                    element = e;
                }
            }
            result.add(new SeatPlace(occupant.person(), occupant.seat(), row, element, head(occupant, sprung)));
        }
        return List.copyOf(result);
    }

    private Optional<double[]> head(Occupant occupant, List<Occupant> sprung) {
        for (int i = 0; i < occupant.moving().size(); i++) {
            if (occupant.moving().get(i).coordinate().equals(HEAD)) {
                return Optional.of(geometry.unit(coordinates.occupant(sprung.indexOf(occupant))[i]));
            }
        }
        return Optional.empty();
    }

    /** Rows of the motion at a point of the body. */
    public PointMotion motionAt(Place place) {
        double x = place.x();
        double z = place.z();
        int n = coordinates.size();
        double[] longitudinal = new double[n];
        double[] longitudinalTilt = new double[n];
        if (coordinates.pitch() >= 0) {
            longitudinal[coordinates.pitch()] = z - masses.pitchAxisHeight();
            longitudinalTilt[coordinates.pitch()] = -GRAVITY;
        }
        if (coordinates.surge() >= 0) {
            longitudinal[coordinates.surge()] = 1;
        }
        double[] roll = geometry.bodyRoll(x);
        double[] lateral = Geometry.combine(-(z - masses.rollAxisHeight(x)), roll, 0, roll);
        if (coordinates.sway() >= 0) {
            lateral[coordinates.sway()] = 1;
        }
        double[] lateralTilt = Geometry.combine(GRAVITY, roll, 0, roll);
        return new PointMotion(geometry.bodyRise(x, place.y()), longitudinal, longitudinalTilt, lateral, lateralTilt);
    }

    /** The description. */
    public Vehicle vehicle() {
        return vehicle;
    }

    /** Who and what is aboard. */
    public LoadCase loadCase() {
        return loadCase;
    }

    /** Names and indices of the coordinates. */
    public Coordinates coordinates() {
        return coordinates;
    }

    /** Equations of motion. */
    public Equations equations() {
        return equations;
    }

    /** Wheels, front to rear, left before right. */
    public List<WheelPlace> wheels() {
        return wheels;
    }

    /** Occupied seats. */
    public List<SeatPlace> seats() {
        return seats;
    }

    /** Position of rest; without friction forces unless {@link #settled} says otherwise. */
    public StaticState rest() {
        return rest;
    }

    /** Kinds of the gapped stages of a spring element, in the order in which its law holds them; empty for others. */
    public List<String> stageNames(String element) {
        return stageNames.getOrDefault(element, List.of());
    }

    /** Mass of the sprung body with its rigid load (kg). */
    public double sprungMass() {
        return body.mass();
    }

    /** Centre of mass of the sprung body with its rigid load. */
    public Place centreOfMass() {
        return Place.of(-body.x(), body.y(), body.z());
    }

    /** Total mass on wheels and hitches (kg). */
    public double totalMass() {
        double sum = body.mass();
        for (Occupant occupant : sprung(body)) {
            sum += occupant.sprungMass();
        }
        return sum
                + vehicle.axles().stream()
                        .mapToDouble(a -> a.unsprungMass().value())
                        .sum();
    }

    /** Height of the axis about which the body pitches (m). */
    public double pitchAxisHeight() {
        return masses.pitchAxisHeight();
    }
}

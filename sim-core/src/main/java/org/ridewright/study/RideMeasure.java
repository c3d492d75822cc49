package org.ridewright.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.ridewright.comfort.Position;
import org.ridewright.ride.Measured;
import org.ridewright.ride.RideResult.ElementResult;
import org.ridewright.ride.RideResult.SeatResult;
import org.ridewright.ride.RideResult.WheelResult;
import org.ridewright.ride.Wanted;
import org.ridewright.signal.ThirdOctave;

/** What a study can ask of a ride test: one number at each of some places, under the name by which study files ask for it. */
@SuppressWarnings("ImmutableEnumChecker") // functions without state, and a set that nobody changes
public enum RideMeasure {
    /** Weighted vertical r.m.s. at the seat, ISO 2631-1. */
    SEAT_RMS(
            "a_w",
            "weighted vertical acceleration at the seat, r.m.s.",
            PlaceReading.seat(Position.SEAT, v -> v.metrics().rms()),
            Wanted.SEAT),
    /** Vibration total of the seat over three axes. */
    SEAT_TOTAL(
            "total a_w",
            "weighted acceleration at the seat, three axes together, r.m.s.",
            PlaceReading.seats(s -> s.total(Position.SEAT)),
            Wanted.SEAT,
            Wanted.ALL_AXES),
    /** Vibration dose value of the vertical motion at the seat. */
    SEAT_VDV(
            "VDV",
            "vertical vibration dose at the seat",
            "m/s^1.75",
            Worse.HIGH,
            Places.SEATS,
            PlaceReading.seat(Position.SEAT, v -> v.metrics().vdv()),
            Wanted.SEAT),
    /** Greatest running r.m.s. over a second. */
    SEAT_MTVV(
            "MTVV",
            "greatest weighted vertical r.m.s. of a second at the seat",
            PlaceReading.seat(Position.SEAT, v -> v.metrics().mtvv()),
            Wanted.SEAT),
    /** Greatest unweighted vertical acceleration. */
    PEAK(
            "peak",
            "peak vertical acceleration, up or down",
            "m/s²",
            Worse.HIGH,
            Places.SEATS_AND_POINTS,
            PlaceReading::peaks,
            Wanted.PEAKS),
    /** R.m.s. jerk below 10 Hz at the seat. */
    SEAT_JERK(
            "jerk",
            "vertical jerk at the seat below 10 Hz, r.m.s.",
            "m/s³",
            Worse.HIGH,
            Places.SEATS,
            PlaceReading.seat(Position.SEAT, v -> v.jerk().felt().rms()),
            Wanted.SEAT,
            Wanted.KINDS_OF_MOTION),
    /** Vertical motion below 3 Hz at the seat. */
    SEAT_HEAVE(
            "heave",
            "heave at the seat, below 3 Hz, r.m.s.",
            PlaceReading.seat(Position.SEAT, v -> v.bands().heave().rms()),
            Wanted.SEAT,
            Wanted.KINDS_OF_MOTION),
    /** From 3 to 10 Hz. */
    SEAT_JOLT(
            "jolt",
            "jolt at the seat, 3 to 10 Hz, r.m.s.",
            PlaceReading.seat(Position.SEAT, v -> v.bands().jolt().rms()),
            Wanted.SEAT,
            Wanted.KINDS_OF_MOTION),
    /** Above 10 Hz. */
    SEAT_BUZZ(
            "buzz",
            "buzz at the seat, above 10 Hz, r.m.s.",
            PlaceReading.seat(Position.SEAT, v -> v.bands().buzz().rms()),
            Wanted.SEAT,
            Wanted.KINDS_OF_MOTION),
    /** Weighted vertical r.m.s. at the feet. */
    FEET_RMS(
            "feet a_w",
            "weighted vertical acceleration at the feet, r.m.s.",
            PlaceReading.seat(Position.FEET, v -> v.metrics().rms()),
            Wanted.SEAT,
            Wanted.FEET),
    /** Below 3 Hz at the feet. */
    FEET_HEAVE(
            "feet heave",
            "heave at the feet, below 3 Hz, r.m.s.",
            PlaceReading.seat(Position.FEET, v -> v.bands().heave().rms()),
            Wanted.SEAT,
            Wanted.FEET,
            Wanted.KINDS_OF_MOTION),
    /** From 3 to 10 Hz at the feet. */
    FEET_JOLT(
            "feet jolt",
            "jolt at the feet, 3 to 10 Hz, r.m.s.",
            PlaceReading.seat(Position.FEET, v -> v.bands().jolt().rms()),
            Wanted.SEAT,
            Wanted.FEET,
            Wanted.KINDS_OF_MOTION),
    /** Above 10 Hz at the feet. */
    FEET_BUZZ(
            "feet buzz",
            "buzz at the feet, above 10 Hz, r.m.s.",
            PlaceReading.seat(Position.FEET, v -> v.bands().buzz().rms()),
            Wanted.SEAT,
            Wanted.FEET,
            Wanted.KINDS_OF_MOTION),
    /** Vertical motion at the seat, band by band. */
    SEAT_BANDS(
            "third octaves", "vertical acceleration at the seat in third octaves, r.m.s.", Position.SEAT, Wanted.SEAT),
    /** The same at the feet. */
    FEET_BANDS(
            "feet third octaves",
            "vertical acceleration at the feet in third octaves, r.m.s.",
            Position.FEET,
            Wanted.SEAT,
            Wanted.FEET),
    /** Time during which a rider is off the seat. */
    TIME_OFF_SEAT(
            "time off seat",
            "time off the seat",
            "s",
            Worse.HIGH,
            Places.SEATS,
            PlaceReading.seats(SeatResult::timeOff)),
    /** Time during which a wheel is off the ground. */
    TIME_OFF_GROUND(
            "time off ground",
            "time off the ground",
            "s",
            Worse.HIGH,
            Places.WHEELS,
            PlaceReading.wheels(WheelResult::timeOff)),
    /** Smallest wheel load. */
    LEAST_LOAD(
            "least wheel load",
            "least load of a wheel",
            "N",
            Worse.LOW,
            Places.WHEELS,
            PlaceReading.wheels(w -> w.least().value()),
            Wanted.WHEEL_LOADS),
    /** Smallest wheel load over that at rest. */
    LEAST_SHARE(
            "least load share",
            "least load of a wheel over that at rest",
            "1",
            Worse.LOW,
            Places.WHEELS,
            PlaceReading.wheels(w -> w.least().value() / w.loadAtRest()),
            Wanted.WHEEL_LOADS),
    /** Greatest wheel load. */
    GREATEST_LOAD(
            "greatest wheel load",
            "greatest load of a wheel",
            "N",
            Worse.HIGH,
            Places.WHEELS,
            PlaceReading.wheels(w -> w.greatest().value()),
            Wanted.WHEEL_LOADS),
    /** Share of time during which a spring's friction is locked. */
    LOCKED(
            "locked share",
            "share of time locked by friction",
            "1",
            Worse.NEITHER,
            Places.SPRINGS,
            PlaceReading.springs(ElementResult::lockedShare)),
    /** Greatest travel from rest in compression. */
    COMPRESSION(
            "compression",
            "greatest compression from rest",
            "m",
            Worse.HIGH,
            Places.SPRINGS,
            PlaceReading.springs(ElementResult::compression),
            Wanted.TRAVEL),
    /** Greatest travel from rest in extension. */
    EXTENSION(
            "extension",
            "greatest extension from rest",
            "m",
            Worse.HIGH,
            Places.SPRINGS,
            PlaceReading.springs(ElementResult::extension),
            Wanted.TRAVEL),
    /** Energy that a spring or damper turns to heat. */
    DISSIPATED(
            "energy dissipated",
            "energy turned to heat",
            "J",
            Worse.NEITHER,
            Places.SPRINGS,
            PlaceReading.springs(ElementResult::dissipated)),
    /** Greatest draught. */
    DRAUGHT(
            "draught",
            "greatest draught",
            "N",
            Worse.HIGH,
            Places.VEHICLE,
            PlaceReading.vehicle(m -> m.ride().draught().value()),
            Wanted.DRAUGHT),
    /** Greatest displacement of the body from rest. */
    SWING(
            "swing",
            "greatest heave of the body from rest",
            "m",
            Worse.HIGH,
            Places.VEHICLE,
            PlaceReading.swings("heave", Measured.Swing::greatest),
            Wanted.SWINGS),
    /** Greatest pitch from rest. */
    PITCH(
            "pitch",
            "greatest pitch of the body from rest",
            "rad",
            Worse.HIGH,
            Places.VEHICLE,
            PlaceReading.swings("pitch", Measured.Swing::greatest),
            Wanted.SWINGS),
    /** Greatest pitch from rest after the last axle has left the obstacles. */
    PITCH_AFTER(
            "pitch after",
            "greatest pitch of the body after the last axle's hit",
            "rad",
            Worse.HIGH,
            Places.VEHICLE,
            PlaceReading.swings("pitch", Measured.Swing::after),
            Wanted.SWINGS),
    /** Greatest roll from rest. */
    ROLL(
            "roll",
            "greatest roll of the body from rest",
            "rad",
            Worse.HIGH,
            Places.VEHICLE,
            PlaceReading.swings("roll", Measured.Swing::greatest),
            Wanted.SWINGS),
    /** How many cycles heave, roll or pitch takes to die away. */
    CYCLES(
            "cycles to rest",
            "cycles before the body comes to rest",
            "1",
            Worse.HIGH,
            Places.MOTIONS,
            PlaceReading.swings(Measured.Swing::cycles),
            Wanted.SWINGS);

    private final String word;
    private final String title;
    private final String unit;
    private final Worse worse;
    private final Places places;
    private final PlaceReading reading;
    private final Set<Wanted> wanted;
    /** Where it is measured in third octaves; absent for a single number. */
    private final Optional<Position> inBands;

    /** Of an acceleration felt at seats. */
    RideMeasure(String word, String title, PlaceReading reading, Wanted... wanted) {
        this(word, title, "m/s²", Worse.HIGH, Places.SEATS, reading, wanted);
    }

    RideMeasure(
            String word,
            String title,
            String unit,
            Worse worse,
            Places places,
            PlaceReading reading,
            Wanted... wanted) {
        this(word, title, unit, worse, places, reading, setOf(wanted), Optional.empty());
    }

    /** Of an acceleration felt at seats, as many numbers as there are bands. */
    RideMeasure(String word, String title, Position inBands, Wanted... wanted) {
        this(word, title, "m/s²", Worse.HIGH, Places.SEATS, PlaceReading.NONE, setOf(wanted), Optional.of(inBands));
        this.wanted.add(Wanted.THIRD_OCTAVES);
    }

    RideMeasure(
            String word,
            String title,
            String unit,
            Worse worse,
            Places places,
            PlaceReading reading,
            Set<Wanted> wanted,
            Optional<Position> inBands) {
        this.word = word;
        this.title = title;
        this.unit = unit;
        this.worse = worse;
        this.places = places;
        this.reading = reading;
        this.wanted = wanted;
        this.inBands = inBands;
    }

    private static Set<Wanted> setOf(Wanted... wanted) {
        Set<Wanted> set = EnumSet.noneOf(Wanted.class);
        set.addAll(List.of(wanted));
        return set;
    }

    /** Name in study files. */
    public String word() {
        return word;
    }

    /** What it is, in words. */
    public String title() {
        return title;
    }

    /** Unit of the number. */
    public String unit() {
        return unit;
    }

    /** Which way it is worse. */
    public Worse worse() {
        return worse;
    }

    /** Where it is taken. */
    public Places places() {
        return places;
    }

    /** What has to be measured for it. */
    public Set<Wanted> wanted() {
        return Set.copyOf(wanted);
    }

    /** The number at each place, in the order of the vehicle; not a number where it does not exist. */
    public Map<String, Double> at(Measured measured) {
        Map<String, Double> values = new LinkedHashMap<>();
        reading.read(measured, values::put);
        return values;
    }

    /** Whether it is asked in third octaves, a number for each. */
    public boolean isInBands() {
        return inBands.isPresent();
    }

    /** The number of a band at each place; of a band that the ride is too short to resolve, not a number. */
    Map<String, Double> at(Measured measured, ThirdOctave band) {
        Map<String, Double> values = new LinkedHashMap<>();
        measured.inBands().stream()
                .filter(felt -> felt.position() == inBands.orElseThrow())
                .forEach(felt -> values.put(felt.seat(), felt.levels().getOrDefault(band, Double.NaN)));
        return values;
    }

    /** The worst of some places; that of {@link Worse#NEITHER} is the greatest. Not a number where there is none. */
    public double worst(Iterable<Double> values) {
        double worst = Double.NaN;
        for (double value : values) {
            boolean worseYet = worse == Worse.LOW ? value < worst : value > worst;
            if (Double.isNaN(worst) || worseYet) {
                worst = value;
            }
        }
        return worst;
    }

    /** Names of all measures. */
    public static List<String> words() {
        List<String> words = new ArrayList<>();
        for (RideMeasure measure : values()) {
            words.add(measure.word);
        }
        return words;
    }

    /** For lists of what is wanted. */
    static Set<Wanted> wantedBy(List<Question> questions) {
        Set<Wanted> all = EnumSet.noneOf(Wanted.class);
        Function<Question, Set<Wanted>> of = q -> q.measure().wanted;
        questions.forEach(q -> all.addAll(of.apply(q)));
        return all;
    }
}

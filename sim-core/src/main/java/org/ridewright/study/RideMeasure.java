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

/**
 * What a study can ask of a ride test: one number at each of some places, under the name by which study files ask for it; its title says what it is.
 * Lengths are in millimetres and angles in milliradians, a millimetre at a metre from the centre, as the eye takes them in.
 */
@SuppressWarnings("ImmutableEnumChecker") // functions without state, and a set that nobody changes
public enum RideMeasure {
    SEAT_RMS(
            "a_w",
            "weighted vertical acceleration at the seat, r.m.s.",
            PlaceReading.seat(Position.SEAT, v -> v.metrics().rms()),
            Wanted.SEAT),
    SEAT_TOTAL(
            "total a_w",
            "weighted acceleration at the seat, three axes together, r.m.s.",
            PlaceReading.seats(s -> s.total(Position.SEAT)),
            Wanted.SEAT,
            Wanted.ALL_AXES),
    SEAT_VDV(
            "VDV",
            "vertical vibration dose at the seat",
            "m/s^1.75",
            Worse.HIGH,
            Places.SEATS,
            PlaceReading.seat(Position.SEAT, v -> v.metrics().vdv()),
            Wanted.SEAT),
    SEAT_MTVV(
            "MTVV",
            "greatest weighted vertical r.m.s. of a second at the seat",
            PlaceReading.seat(Position.SEAT, v -> v.metrics().mtvv()),
            Wanted.SEAT),
    PEAK(
            "peak",
            "peak vertical acceleration, up or down",
            "m/s²",
            Worse.HIGH,
            Places.SEATS_AND_POINTS,
            PlaceReading::peaks,
            Wanted.PEAKS),
    RMS(
            "r.m.s.",
            "vertical acceleration, r.m.s.",
            "m/s²",
            Worse.HIGH,
            Places.SEATS_AND_POINTS,
            (measured, to) -> measured.levels().forEach(to),
            Wanted.LEVELS),
    SEAT_JERK(
            "jerk",
            "vertical jerk at the seat below 10 Hz, r.m.s.",
            "m/s³",
            Worse.HIGH,
            Places.SEATS,
            PlaceReading.seat(Position.SEAT, v -> v.jerk().felt().rms()),
            Wanted.SEAT,
            Wanted.KINDS_OF_MOTION),
    SEAT_HEAVE(
            "heave",
            "heave at the seat, below 3 Hz, r.m.s.",
            PlaceReading.seat(Position.SEAT, v -> v.bands().heave().rms()),
            Wanted.SEAT,
            Wanted.KINDS_OF_MOTION),
    SEAT_JOLT(
            "jolt",
            "jolt at the seat, 3 to 10 Hz, r.m.s.",
            PlaceReading.seat(Position.SEAT, v -> v.bands().jolt().rms()),
            Wanted.SEAT,
            Wanted.KINDS_OF_MOTION),
    SEAT_BUZZ(
            "buzz",
            "buzz at the seat, above 10 Hz, r.m.s.",
            PlaceReading.seat(Position.SEAT, v -> v.bands().buzz().rms()),
            Wanted.SEAT,
            Wanted.KINDS_OF_MOTION),
    FEET_RMS(
            "feet a_w",
            "weighted vertical acceleration at the feet, r.m.s.",
            PlaceReading.seat(Position.FEET, v -> v.metrics().rms()),
            Wanted.SEAT,
            Wanted.FEET),
    FEET_HEAVE(
            "feet heave",
            "heave at the feet, below 3 Hz, r.m.s.",
            PlaceReading.seat(Position.FEET, v -> v.bands().heave().rms()),
            Wanted.SEAT,
            Wanted.FEET,
            Wanted.KINDS_OF_MOTION),
    FEET_JOLT(
            "feet jolt",
            "jolt at the feet, 3 to 10 Hz, r.m.s.",
            PlaceReading.seat(Position.FEET, v -> v.bands().jolt().rms()),
            Wanted.SEAT,
            Wanted.FEET,
            Wanted.KINDS_OF_MOTION),
    FEET_BUZZ(
            "feet buzz",
            "buzz at the feet, above 10 Hz, r.m.s.",
            PlaceReading.seat(Position.FEET, v -> v.bands().buzz().rms()),
            Wanted.SEAT,
            Wanted.FEET,
            Wanted.KINDS_OF_MOTION),
    SEAT_BANDS(
            "third octaves", "vertical acceleration at the seat in third octaves, r.m.s.", Position.SEAT, Wanted.SEAT),
    FEET_BANDS(
            "feet third octaves",
            "vertical acceleration at the feet in third octaves, r.m.s.",
            Position.FEET,
            Wanted.SEAT,
            Wanted.FEET),
    TIME_OFF_SEAT(
            "time off seat",
            "time off the seat",
            "s",
            Worse.HIGH,
            Places.SEATS,
            PlaceReading.seats(SeatResult::timeOff)),
    TIME_OFF_GROUND(
            "time off ground",
            "time off the ground, in total",
            "s",
            Worse.HIGH,
            Places.WHEELS,
            PlaceReading.wheels(WheelResult::timeOff)),
    LEAST_LOAD(
            "least wheel load",
            "least load of a wheel",
            "N",
            Worse.LOW,
            Places.WHEELS,
            PlaceReading.wheels(w -> w.least().value()),
            Wanted.WHEEL_LOADS),
    LEAST_SHARE(
            "least load share",
            "least load of a wheel over that at rest",
            "1",
            Worse.LOW,
            Places.WHEELS,
            PlaceReading.wheels(w -> w.least().value() / w.loadAtRest()),
            Wanted.WHEEL_LOADS),
    GREATEST_LOAD(
            "greatest wheel load",
            "greatest load of a wheel",
            "N",
            Worse.HIGH,
            Places.WHEELS,
            PlaceReading.wheels(w -> w.greatest().value()),
            Wanted.WHEEL_LOADS),
    LOCKED(
            "locked share",
            "share of time locked by friction",
            "1",
            Worse.NEITHER,
            Places.SPRINGS,
            PlaceReading.springs(ElementResult::lockedShare)),
    COMPRESSION(
            "compression",
            "greatest compression from rest",
            "mm",
            Worse.HIGH,
            Places.SPRINGS,
            PlaceReading.springs(ElementResult::compression).inThousandths(),
            Wanted.TRAVEL),
    TRAVEL_LEFT(
            "travel left",
            "least travel left before the bump stop",
            "mm",
            Worse.LOW,
            Places.SPRINGS,
            PlaceReading.travelLeft().inThousandths(),
            Wanted.TRAVEL),
    EXTENSION(
            "extension",
            "greatest extension from rest",
            "mm",
            Worse.HIGH,
            Places.SPRINGS,
            PlaceReading.springs(ElementResult::extension).inThousandths(),
            Wanted.TRAVEL),
    DISSIPATED(
            "energy dissipated",
            "energy turned to heat",
            "J",
            Worse.NEITHER,
            Places.SPRINGS,
            PlaceReading.springs(ElementResult::dissipated)),
    DRAUGHT(
            "draught",
            "greatest draught",
            "N",
            Worse.HIGH,
            Places.VEHICLE,
            PlaceReading.vehicle(m -> m.ride().draught().value()),
            Wanted.DRAUGHT),
    SWING(
            "swing",
            "greatest heave of the body from rest",
            "mm",
            Worse.HIGH,
            Places.VEHICLE,
            PlaceReading.swings("heave", Measured.Swing::greatest).inThousandths(),
            Wanted.SWINGS),
    PITCH(
            "pitch",
            "greatest pitch of the body from rest",
            "mrad",
            Worse.HIGH,
            Places.VEHICLE,
            PlaceReading.swings("pitch", Measured.Swing::greatest).inThousandths(),
            Wanted.SWINGS),
    PITCH_AFTER(
            "pitch after",
            "greatest pitch of the body after the last axle's hit",
            "mrad",
            Worse.HIGH,
            Places.VEHICLE,
            PlaceReading.swings("pitch", Measured.Swing::after).inThousandths(),
            Wanted.SWINGS),
    ROLL(
            "roll",
            "greatest roll of the body from rest",
            "mrad",
            Worse.HIGH,
            Places.VEHICLE,
            PlaceReading.swings("roll", Measured.Swing::greatest).inThousandths(),
            Wanted.SWINGS),
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

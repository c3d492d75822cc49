package org.ridewright.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.ride.Measured;
import org.ridewright.signal.ThirdOctave;

/**
 * A number that is asked of every ride test.
 *
 * @param measure what
 * @param place name of the seat, point, wheel, spring or motion; absent: the worst of all of them
 * @param band of a measure in third octaves, which one; absent for all others
 */
public record Question(RideMeasure measure, Optional<String> place, Optional<ThirdOctave> band) {
    /** Third octaves in which ISO 2631-1 weights what riders feel (Hz). */
    private static final double LOWEST = 0.5;

    private static final double HIGHEST = 80;

    /** Of a single number. */
    public Question(RideMeasure measure, Optional<String> place) {
        this(measure, place, Optional.empty());
    }

    /** One question; of a measure in third octaves one for each band, lowest first. */
    public static List<Question> of(RideMeasure measure, Optional<String> place) {
        return !measure.isInBands()
                ? List.of(new Question(measure, place))
                : ThirdOctave.between(LOWEST, HIGHEST).stream()
                        .map(band -> new Question(measure, place, Optional.of(band)))
                        .toList();
    }

    /** Its name in tables: the measure's, the place where one is named, and the band. */
    public String name() {
        return family() + band.map(b -> ", " + spoken(b)).orElse("");
    }

    /** The name without the band: how study files ask for it. */
    public String family() {
        return measure.word() + place.map(p -> " at " + p).orElse("");
    }

    /** What it is, in words, whatever the band. */
    public String title() {
        return measure.title() + place.map(p -> ", " + p).orElse("");
    }

    /** A band by the frequency that names it, {@code 31.5 Hz}. */
    public static String spoken(ThirdOctave band) {
        return new BigDecimal(band.nominal())
                        .round(new MathContext(3))
                        .stripTrailingZeros()
                        .toPlainString() + " Hz";
    }

    /** With its unit, as at the head of a table's column. */
    public String head() {
        return measure.unit().equals("1") ? name() : name() + " (" + measure.unit() + ")";
    }

    /** The number; not a number where the vehicle has no such place, or nothing could be measured. */
    public double of(Measured measured) {
        Map<String, Double> values = band.isPresent() ? measure.at(measured, band.get()) : measure.at(measured);
        if (place.isPresent()) {
            return values.getOrDefault(place.get(), Double.NaN);
        }
        if (measure.places() == Places.SPRINGS) {
            // what is never locked, or never moves, is no spring with friction to be judged by
            measured.ride().springs().stream()
                    .filter(spring -> !spring.kind().equals("spring"))
                    .forEach(other -> values.remove(other.element()));
        }
        return measure.worst(values.values());
    }
}

package org.ridewright.calibration;

import java.util.Locale;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.Spread;
import org.ridewright.quantity.UnfitValueException;

/**
 * A value that is sought.
 *
 * @param path of the value in the file
 * @param spread what was known of it before
 * @param prior where that comes from, in words
 */
public record Unknown(String path, Spread spread, String prior) {
    /** Factor up and down of a value that states no tolerance (our choice): wide enough to be no knowledge beside any measurement. */
    static final double WIDE_FACTOR = 2;
    /** The same of a length or angle, as a share of its value (our choice). */
    static final double WIDE_SHARE = 0.3;

    /**
     * A value with the tolerance that its file states, or with a wide one.
     *
     * @throws UnfitValueException if it is no quantity, or is 0 without a tolerance
     */
    public static Unknown of(NamedValue value) {
        Measure measure = value.measure()
                .orElseThrow(() -> new UnfitValueException(
                        value.path() + " is '" + value.written() + "', no quantity that could be calibrated"));
        Spread spread = Spread.of(measure);
        if (spread.deviation() > 0) {
            return new Unknown(value.path(), spread, "tolerance of the file");
        }
        if (measure.value() == 0) {
            throw new UnfitValueException(
                    value.path() + " is 0 without a tolerance; state one, such as '0 m ± 20 mm', to calibrate it");
        }
        return spread.byFactors()
                ? new Unknown(
                        value.path(),
                        new Spread(measure.kind(), measure.value(), Math.log(WIDE_FACTOR), true),
                        "no tolerance in the file: a factor of 2 up or down")
                : new Unknown(
                        value.path(),
                        new Spread(measure.kind(), measure.value(), WIDE_SHARE * Math.abs(measure.value()), false),
                        "no tolerance in the file: 30 %");
    }

    /** Words for the file: the value {@code z} standard deviations from the central one. */
    String written(double z) {
        return Spread.written(spread.kind(), spread.at(z));
    }

    /**
     * Standard error of the value (SI) where z has this deviation: half the distance of the values one deviation to either side.
     *
     * @param z estimate
     * @param deviation of z
     */
    double standardError(double z, double deviation) {
        return (spread.at(z + deviation) - spread.at(z - deviation)) / 2;
    }

    /** How the value goes with z, for words: by how many per cent a deviation changes it, or by how much. */
    String deviationInWords(double deviation) {
        return spread.byFactors()
                ? String.format(Locale.ROOT, "%.2g %%", 100 * Math.expm1(spread.deviation() * deviation))
                : String.format(
                        Locale.ROOT,
                        "%.2g %s",
                        spread.deviation() * deviation,
                        spread.kind().siUnit());
    }
}

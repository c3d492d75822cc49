package org.ridewright.fieldwork;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ridewright.measurement.LogAxis;
import org.ridewright.measurement.LogOptions;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Place;

/**
 * A recorded log and how it is to be taken; {@code io.MeasurementsFile} reads it.
 *
 * @param written the file's name as it was written
 * @param file as it can be opened
 * @param columns where the values are
 * @param options how they are taken, with the stretch that counts
 * @param sensor where the sensor was fastened
 */
public record LogReference(String written, Path file, Columns columns, LogOptions options, Sensor sensor) {
    /**
     * What was said of the columns; what was not is found from their names.
     *
     * @param time name or number of the column of time
     * @param axes names or numbers of the columns of acceleration
     * @param unit of the accelerations
     * @param timeUnit of the times
     * @param rate samples per second (Hz), where the times are not to be used
     * @param word in the names of the columns wanted
     */
    public record Columns(
            Optional<String> time,
            Map<LogAxis, String> axes,
            Optional<String> unit,
            Optional<String> timeUnit,
            OptionalDouble rate,
            Optional<String> word) {
        public Columns {
            axes = Map.copyOf(axes);
        }
    }

    /** Where a sensor was fastened. */
    public sealed interface Sensor {
        /** In words. */
        String label();

        /** Between a person and a seat. */
        record OnSeat(String seat) implements Sensor {
            @Override
            public String label() {
                return seat;
            }
        }

        /** To the body. */
        record OnBody(Place place) implements Sensor {
            @Override
            public String label() {
                return "a place of the body";
            }
        }

        /** To an axle, at one wheel or in its middle. */
        record OnAxle(String axle, Optional<Side> side) implements Sensor {
            @Override
            public String label() {
                return Axle.title(axle) + side.map(s -> ", " + s.word()).orElse("");
            }
        }
    }
}

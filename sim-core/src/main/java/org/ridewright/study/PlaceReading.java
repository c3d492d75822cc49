package org.ridewright.study;

import java.util.function.BiConsumer;
import java.util.function.ToDoubleFunction;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.Position;
import org.ridewright.ride.Measured;
import org.ridewright.ride.RideResult.ElementResult;
import org.ridewright.ride.RideResult.PointResult;
import org.ridewright.ride.RideResult.SeatResult;
import org.ridewright.ride.RideResult.WheelResult;
import org.ridewright.ride.StopTravel;

/** Takes one number at each of some places from what was measured of a ride test. */
@FunctionalInterface
interface PlaceReading {
    /** Of what is no single number. */
    PlaceReading NONE = (measured, to) -> {};

    /**
     * @param to takes the name of each place and its number, which is not a number where it does not exist
     */
    void read(Measured measured, BiConsumer<String, Double> to);

    /** The same in thousandths of the unit: millimetres of metres. */
    default PlaceReading inThousandths() {
        return (measured, to) -> read(measured, (place, value) -> to.accept(place, 1000 * value));
    }

    /** Of the vehicle as a whole. */
    static PlaceReading vehicle(ToDoubleFunction<Measured> what) {
        return (measured, to) -> to.accept("vehicle", what.applyAsDouble(measured));
    }

    /** At every occupied seat. */
    static PlaceReading seats(ToDoubleFunction<SeatResult> what) {
        return (measured, to) ->
                measured.ride().seats().forEach(seat -> to.accept(seat.seat(), what.applyAsDouble(seat)));
    }

    /** Of the vertical motion where each rider meets the vehicle. */
    static PlaceReading seat(Position position, ToDoubleFunction<AxisVibration> what) {
        return seats(seat -> seat.felt()
                .flatMap(person -> person.axis(position, Axis.Z))
                .map(what::applyAsDouble)
                .orElse(Double.NaN));
    }

    /** Greatest acceleration, up or down, of seats and points. */
    static void peaks(Measured measured, BiConsumer<String, Double> to) {
        measured.ride().seats().forEach(seat -> to.accept(seat.seat(), seat.peak()));
        for (PointResult point : measured.ride().points()) {
            to.accept(
                    point.point(),
                    Math.max(point.greatest().value(), -point.least().value()));
        }
    }

    /** At every wheel. */
    static PlaceReading wheels(ToDoubleFunction<WheelResult> what) {
        return (measured, to) ->
                measured.ride().wheels().forEach(wheel -> to.accept(wheel.wheel(), what.applyAsDouble(wheel)));
    }

    /** Springs alone when it comes to what springs do; dampers, bars and cushions can be asked for by name. */
    static PlaceReading springs(ToDoubleFunction<ElementResult> what) {
        return (measured, to) ->
                measured.ride().springs().forEach(spring -> to.accept(spring.element(), what.applyAsDouble(spring)));
    }

    /** Travel that is left before each spring's bump stop. */
    static PlaceReading travelLeft() {
        return (measured, to) -> measured.ride()
                .springs()
                .forEach(spring -> to.accept(
                        spring.element(), StopTravel.left(measured.ride().model(), spring)));
    }

    /** Of one motion of the body. */
    static PlaceReading swings(String motion, ToDoubleFunction<Measured.Swing> what) {
        return (measured, to) -> measured.swings().stream()
                .filter(swing -> swing.motion().equals(motion))
                .forEach(swing -> to.accept("vehicle", what.applyAsDouble(swing)));
    }

    /** Of each motion of the body. */
    static PlaceReading swings(ToDoubleFunction<Measured.Swing> what) {
        return (measured, to) ->
                measured.swings().forEach(swing -> to.accept(swing.motion(), what.applyAsDouble(swing)));
    }
}

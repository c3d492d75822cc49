package org.ridewright.ride;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.road.Road;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Vehicle;

/**
 * What is to be ridden over what, how fast, and what to read off. Each vehicle goes over each road, with each of its load cases, at
 * each of its speeds.
 *
 * @param about in the author's words; may be empty
 * @param duration of each run (s); absent: until the motion after the last obstacle has had time to die away
 * @param distance that the front axle goes in each run (m), in place of a duration
 * @param samplingRate of the traces (Hz), > 0
 * @param points read off in every vehicle besides its occupied seats
 * @param ridingADay for which daily exposures are worked out (s), at most 24 h; absent: they are not
 */
public record Scenario(
        String name,
        String about,
        List<Entrant> entrants,
        List<Road> roads,
        Optional<Measure> duration,
        Optional<Measure> distance,
        Measure samplingRate,
        Start start,
        boolean braked,
        List<Point> points,
        Optional<Measure> ridingADay) {
    public Scenario {
        entrants = List.copyOf(entrants);
        roads = List.copyOf(roads);
        points = List.copyOf(points);
    }

    /**
     * A vehicle that takes part.
     *
     * @param file name of the file that describes it
     * @param loadCases names; all of the vehicle's where empty
     * @param speeds at least one
     */
    public record Entrant(Vehicle vehicle, String file, List<String> loadCases, List<SpeedPlan> speeds) {
        public Entrant {
            loadCases = List.copyOf(loadCases);
            speeds = List.copyOf(speeds);
        }
    }

    /** A named place of the body where motion is read off; of one vehicle, or of each where none is named. */
    public record Point(String name, Optional<String> vehicle, Place place) {}

    /** In which direction the springs settled before the run: what their friction holds at the start. */
    public enum Start {
        /** Friction holds nothing. */
        UNSTRESSED("no friction held"),
        /** The body sank to its place. */
        FROM_ABOVE("from above"),
        /** The body rose to its place. */
        FROM_BELOW("from below");

        private final String word;

        Start(String word) {
            this.word = word;
        }

        /** The words as written in files. */
        public String word() {
            return word;
        }
    }
}

package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Axle;

/**
 * The weight under one axle of a two-axled vehicle, level and with the other axle raised: the higher the centre of mass, the more it
 * goes back.
 *
 * @param load who and what was aboard
 * @param lifted name of the raised axle
 * @param by how far its wheels were raised (m), > 0
 * @param level mass shown under the other axle before (kg); absent: from the weights of the same load
 * @param raised mass shown under the other axle with the first one up (kg)
 * @param total mass of vehicle and load (kg); absent: from the weights of the same load
 * @param springs whether they could move
 */
public record LiftedAxle(
        Heading heading,
        Loading load,
        String lifted,
        Measure by,
        Optional<Measure> level,
        Measure raised,
        Optional<Measure> total,
        Springs springs)
        implements Fact {
    /** What the springs did while the axle was up. */
    public enum Springs {
        /** Blocks between body and axles: the vehicle tilts as one piece. */
        BLOCKED("blocked"),
        /** The body leans back further than the line of the wheel centres. */
        FREE("free");

        private final String word;

        Springs(String word) {
            this.word = word;
        }

        /** The word as written in files. */
        public String word() {
            return word;
        }
    }

    @Override
    public String key() {
        return "lifted axle";
    }

    @Override
    public String label() {
        return heading.label(Axle.title(lifted) + " lifted, " + load.label());
    }

    @Override
    public Optional<Loading> loading() {
        return Optional.of(load);
    }

    @Override
    public List<Measure> readings() {
        return Stream.of(Optional.of(by), level, Optional.of(raised), total)
                .flatMap(Optional::stream)
                .toList();
    }
}

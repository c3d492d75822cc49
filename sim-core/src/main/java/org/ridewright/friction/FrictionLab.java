package org.ridewright.friction;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/**
 * All that the friction laboratory finds of one vehicle.
 *
 * @param model under the load that everything but the loops is about, friction as written
 * @param loops of each spring under each load
 * @param ringDowns front, rear, roll, as far as they suit the vehicle
 * @param alone its body on its springs alone, beside a closed form
 */
public record FrictionLab(
        VehicleModel model,
        Settings settings,
        List<SpringLoops> loops,
        List<RingDowns> ringDowns,
        ForcedResponse forced,
        BodyAlone alone,
        TradeOff tradeOff) {
    /** Oiled, as written, rusted. */
    public static final List<Greasing> GREASINGS = List.of(
            new Greasing("oiled", Friction.OILED),
            new Greasing("as written", 1),
            new Greasing("rusted", Greasing.RUSTED));

    public FrictionLab {
        loops = List.copyOf(loops);
        ringDowns = List.copyOf(ringDowns);
    }

    /**
     * What may be chosen.
     *
     * @param load name of the load case
     * @param speeds rising (m/s), at least one
     * @param amplitudes of the sinusoidal road, rising (m)
     * @param depth from which the body is let go (m)
     * @param draws of vehicle and gravel, at least 1
     */
    public record Settings(String load, List<Double> speeds, List<Double> amplitudes, double depth, int draws) {
        public Settings {
            speeds = List.copyOf(speeds);
            amplitudes = List.copyOf(amplitudes);
        }
    }

    /** The middle one of the load cases with somebody aboard; of all where there is none. */
    public static LoadCase usualLoad(Vehicle vehicle) {
        List<LoadCase> manned = vehicle.loadCases().stream()
                .filter(load -> !VehicleModel.assemble(vehicle, load, Ground.UNYIELDING, false)
                        .seats()
                        .isEmpty())
                .toList();
        List<LoadCase> among = manned.isEmpty() ? vehicle.loadCases() : manned;
        return among.get(among.size() / 2);
    }

    /**
     * Does everything.
     *
     * @throws RideException if no spring of the vehicle rubs, or it cannot stand or ride
     */
    public static FrictionLab of(VehicleDraws vehicles, Settings settings, TradeOff.Progress progress) {
        Vehicle vehicle = vehicles.vehicle(0);
        List<SpringLoops> loops = new ArrayList<>();
        for (LoadCase load : vehicle.loadCases()) {
            loops.addAll(SpringLoops.of(VehicleModel.assemble(vehicle, load, Ground.UNYIELDING, false)));
        }
        if (loops.isEmpty()) {
            throw new RideException(frictionless(vehicle));
        }
        // what comes before the rides takes some seconds
        progress.at(0, TradeOff.rides(settings.speeds().size(), settings.draws()));
        LoadCase load = vehicle.loadCase(settings.load()).orElseThrow();
        VehicleModel rolling = VehicleModel.assemble(vehicle, load, Ground.UNYIELDING, false);
        VehicleModel braked = VehicleModel.assemble(vehicle, load, Ground.UNYIELDING, true);
        return new FrictionLab(
                rolling,
                settings,
                loops,
                RingDowns.of(braked, GREASINGS, settings.depth()),
                ForcedResponse.of(rolling, settings.amplitudes()),
                BodyAlone.of(rolling),
                TradeOff.of(vehicles, settings.load(), settings.speeds(), settings.draws(), progress));
    }

    private static String frictionless(Vehicle vehicle) {
        return "'" + vehicle.name() + "': none of its springs has dry friction, so that there is nothing to vary; "
                + "write one under a spring, such as friction: {share of load: 0.05, locked rate: 2 times}";
    }
}

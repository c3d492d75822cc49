package org.ridewright.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ridewright.dynamics.Coordinates;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.SymmetricPair;
import org.ridewright.modal.Mode.DampedSwing;

/**
 * Natural frequencies and modes of a vehicle about where it stands, {@code (K − ω² M) φ = 0}, and the damped ones beside them.
 *
 * @param linear what was solved
 * @param modes frequency rising
 */
public record Modes(LinearModel linear, List<Mode> modes) {
    /** Below this part of the greatest ω², an ω² is round-off of nothing. */
    private static final double NOTHING = 1e-12;
    /** A second motion with more than this share of the energy is named too. */
    private static final double NAMED_TOO = 0.3;
    /** A body that pitches less than this against its rise has no centre worth telling: it lies more than this many metres away. */
    private static final double FARTHEST_CENTRE = 1e4;

    public Modes {
        modes = List.copyOf(modes);
    }

    /**
     * Modes of a vehicle about its position of rest.
     *
     * @throws RideException if it does not stand firmly there
     */
    public static Modes of(VehicleModel model, Condition condition) {
        return of(model, LinearModel.of(model, condition));
    }

    /** The same with rates and dampings told. */
    public static Modes of(VehicleModel model, LinearModel linear) {
        SymmetricPair pair = SymmetricPair.of(linear.stiffnessMatrix(), linear.massMatrix());
        int n = linear.size();
        double nothing = NOTHING * pair.values()[n - 1];
        if (pair.values()[0] < -nothing) {
            throw new RideException("'" + model.vehicle().name() + "', load case '"
                    + model.loadCase().name()
                    + "' stands like a stick on its end: once moved it falls over. Check heights, spring rates and the distance "
                    + "between the springs");
        }
        int free = (int) Arrays.stream(pair.values()).filter(v -> v <= nothing).count();
        List<Optional<DampedSwing>> swings = DampedModes.of(pair, linear.dampingMatrix(), free);
        Parts parts = new Parts(model);
        List<Mode> modes = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double[] shape = pair.vectors()[i];
            List<Participation> shares = parts.of(shape);
            modes.add(new Mode(
                    i < free && shares.get(0).motion() == Motion.SURGE ? "rolling along" : name(shares),
                    shares.get(0).motion(),
                    i < free ? 0 : Math.sqrt(pair.values()[i]) / (2 * Math.PI),
                    shape,
                    shares,
                    i < free ? OptionalDouble.empty() : centre(model.coordinates(), shape),
                    swings.get(i)));
        }
        return new Modes(linear, told(modes));
    }

    private static String name(List<Participation> shares) {
        Participation first = shares.get(0);
        if (shares.size() == 1 || shares.get(1).share() <= NAMED_TOO) {
            return first.name();
        }
        Participation second = shares.get(1);
        if (first.name().startsWith(second.name()) || second.name().startsWith(first.name())) {
            return first.name();
        }
        if (first.motion() != second.motion()) {
            return first.name() + " with " + second.name();
        }
        boolean together = first.amplitude() * second.amplitude() > 0;
        return Stream.of(first.name(), second.name()).sorted().collect(Collectors.joining(" and "))
                + (together ? ", together" : ", against each other");
    }

    /** {@code −Z/θ}; Z at the centre of mass. */
    private static OptionalDouble centre(Coordinates at, double[] shape) {
        if (at.pitch() < 0) {
            return OptionalDouble.empty();
        }
        double centre = -shape[at.heave()] / shape[at.pitch()];
        return Math.abs(centre) < FARTHEST_CENTRE ? OptionalDouble.of(centre) : OptionalDouble.empty();
    }

    /** Modes of one name are numbered from the slowest. */
    private static List<Mode> told(List<Mode> modes) {
        Map<String, Integer> count = new HashMap<>();
        modes.forEach(m -> count.merge(m.name(), 1, Integer::sum));
        Map<String, Integer> next = new HashMap<>();
        return modes.stream()
                .map(m -> count.get(m.name()) == 1
                        ? m
                        : renamed(m, m.name() + ", no. " + next.merge(m.name(), 1, Integer::sum)))
                .toList();
    }

    private static Mode renamed(Mode m, String name) {
        return new Mode(
                name, m.motion(), m.frequency(), m.shape(), m.participations(), m.centreBehindMass(), m.damped());
    }

    /** Angular natural frequencies, rising (rad/s). */
    public double[] omegas() {
        return modes.stream().mapToDouble(Mode::omega).toArray();
    }

    /** The mode that has more of a motion in it than any other, if one has at least a third of its energy there. */
    public Optional<Mode> chief(Motion motion) {
        return modes.stream()
                .filter(m -> !m.free() && m.share(motion) > 1.0 / 3)
                .max((a, b) -> Double.compare(a.share(motion), b.share(motion)));
    }
}

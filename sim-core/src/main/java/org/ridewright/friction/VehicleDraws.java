package org.ridewright.friction;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.random.Well19937c;
import org.ridewright.dynamics.RideException;
import org.ridewright.quantity.Adjustable;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.vehicle.Vehicle;

/**
 * A vehicle as its tolerances let it be. The friction of the springs is left as written, since it is what is varied: what more or less of it
 * does is then told beside one scale.
 */
public final class VehicleDraws {
    private static final Set<String> LIMITS = Set.of("share of load", "half loop height", "at load", "constant");
    private static final int MOST_TRIES = 20;

    private final Adjustable<Vehicle> document;
    private final JointSpread spread;
    private final Set<String> kept;

    /** @param spread of the values of the document that have a tolerance */
    public VehicleDraws(Adjustable<Vehicle> document, JointSpread spread) {
        this.document = document;
        this.spread = spread;
        List<String> paths = spread.paths();
        kept = IntStream.range(0, paths.size())
                .filter(i -> isLimit(paths.get(i), spread.spreads().get(i).kind()))
                .mapToObj(paths::get)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** A joint that twists rubs with a torque, and is no spring. */
    private static boolean isLimit(String path, QuantityKind kind) {
        int group = path.indexOf(".friction.");
        return group > 0
                && kind != QuantityKind.TORQUE
                && LIMITS.contains(path.substring(group + ".friction.".length()));
    }

    /** Number of values that are drawn. */
    public int uncertain() {
        return spread.size() - kept.size();
    }

    /**
     * The same vehicle for the same number, whoever asks; number 0 is the one that is written.
     *
     * @throws RideException if next to no vehicle within the tolerances can be
     */
    public Vehicle vehicle(int number) {
        if (number == 0 || uncertain() == 0) {
            return document.asWritten();
        }
        Well19937c random = new Well19937c(number);
        for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
            double[] w = new double[spread.size()];
            for (int i = 0; i < w.length; i++) {
                w[i] = random.nextGaussian();
            }
            Map<String, String> texts = new LinkedHashMap<>(spread.texts(w));
            texts.keySet().removeAll(kept);
            Optional<Vehicle> drawn = fitting(texts);
            if (drawn.isPresent()) {
                return drawn.get();
            }
        }
        throw new RideException("of " + MOST_TRIES + " vehicles within the tolerances none can be; check them");
    }

    /** None where no such vehicle can be. */
    private Optional<Vehicle> fitting(Map<String, String> texts) {
        try {
            return Optional.of(document.with(texts));
        } catch (UnfitValueException unfit) {
            return Optional.empty();
        }
    }
}

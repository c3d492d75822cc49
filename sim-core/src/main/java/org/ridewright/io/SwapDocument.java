package org.ridewright.io;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Multiple;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.Spread;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.Scenario;
import org.ridewright.why.Change;
import org.ridewright.why.Swap;
import org.ridewright.why.SwappedRides;

/**
 * A vehicle file with swaps, on a ride. {@code × 0.3} multiplies the value that is drawn, {@code 0.5 of PATH} is a part of another value as it is
 * drawn, whatever is exchanged. An alternative that states a tolerance is drawn within it, by itself; what one swap says with the same
 * relative tolerance at like paths, of axle after axle, is one thing that is not known, and drawn once.
 */
public final class SwapDocument implements SwappedRides {
    private static final Pattern PART = Pattern.compile("((?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?) of (.+)");

    private final VehicleDocument vehicle;
    private final JointSpread joint;
    private final List<Swap> swaps;
    private final List<List<Exchange>> exchanges = new ArrayList<>();
    private final Ride ride;
    private final JointSpread ofRide;
    private final int ownFrom;
    private final int uncertain;

    /** Puts a vehicle on its ride. */
    @FunctionalInterface
    public interface Ride {
        /**
         * @param draw number of the draw, −1 as written
         * @param texts exchanges by path of the vehicle's file
         * @param own values of the ride itself that were drawn, by its own paths
         */
        Scenario of(int draw, Map<String, String> texts, Map<String, String> own);

        /** What is known of values of the ride itself. */
        default JointSpread spread() {
            return JointSpread.independent(List.of());
        }

        /** What the ride puts in place of values of the vehicle file, by their path there. */
        default Map<String, String> instead() {
            return Map.of();
        }
    }

    /**
     * One place that is exchanged.
     *
     * @param path with counted items
     * @param own place of its number among all that are drawn; −1 where it has no tolerance
     * @param drawnAs place of its base among the vehicle's uncertain values; −1 where it is no part of one, or of a certain one
     */
    private record Exchange(String path, String text, int own, Spread spread, int drawnAs, double factor) {}

    /**
     * @param swaps each of which must make a vehicle by itself
     * @throws UnfitValueException if a swap leads nowhere, makes no vehicle, or changes what another one changes
     */
    public SwapDocument(VehicleDocument vehicle, List<Swap> swaps, Ride ride) {
        this.vehicle = vehicle;
        this.joint = vehicle.spread();
        this.swaps = List.copyOf(swaps);
        this.ride = ride;
        ofRide = ride.spread();
        int next = joint.size();
        Map<String, String> takenBy = new LinkedHashMap<>();
        for (Swap swap : swaps) {
            List<Exchange> own = exchanges(swap, next);
            next += (int) own.stream()
                    .mapToInt(Exchange::own)
                    .filter(at -> at >= 0)
                    .distinct()
                    .count();
            for (Exchange exchange : own) {
                refuseUnused(exchange.path(), swap.name());
                claim(canonical(exchange.path()), swap.name(), takenBy);
            }
            exchanges.add(own);
        }
        ownFrom = next;
        uncertain = next + ofRide.size();
    }

    /** The values of the vehicle's file, those of the ride in their place. */
    public static List<NamedValue> values(VehicleDocument vehicle, Ride ride) {
        List<NamedValue> values = new ArrayList<>();
        for (NamedValue value : vehicle.values()) {
            if (ride.instead().keySet().stream().noneMatch(path -> within(value.path(), path))) {
                values.add(value);
            }
        }
        ride.instead().forEach((path, text) -> {
            if (!text.isEmpty()) {
                values.add(new NamedValue(path, text, Optional.empty()));
            }
        });
        return values;
    }

    private void refuseUnused(String path, String swap) {
        ride.instead().forEach((instead, text) -> {
            if (within(path, instead) && !path.equals(instead)) {
                throw new UnfitValueException("the swap '" + swap + "' cannot be made: the scenario has "
                        + (text.isEmpty() ? "other seats than" : "'" + text + "' in place of")
                        + " what the vehicle file says there, so that " + path
                        + " is not used; swap " + instead + " as a whole, or take the key out of the scenario");
            }
        });
    }

    private List<Exchange> exchanges(Swap swap, int from) {
        try {
            Map<String, String> texts = new LinkedHashMap<>();
            Map<String, Base> bases = new HashMap<>();
            for (Change change : swap.changes()) {
                String text = change.text().strip();
                for (String path : vehicle.places(change.path())) {
                    Optional<Base> base = base(path, text);
                    base.ifPresent(b -> bases.put(path, b));
                    texts.put(path, base.flatMap(Base::text).orElse(text));
                }
            }
            Map<String, Measure> said = vehicle.said(texts);
            List<Exchange> exchanges = new ArrayList<>();
            Map<String, Integer> drawn = new HashMap<>();
            for (Map.Entry<String, String> text : texts.entrySet()) {
                String path = text.getKey();
                Measure measure = said.get(path);
                Base base = bases.get(path);
                boolean tolerated = base == null && measure != null && measure.tolerance() > 0;
                int own = tolerated ? drawn.computeIfAbsent(unknown(path, measure), u -> from + drawn.size()) : -1;
                exchanges.add(new Exchange(
                        path,
                        text.getValue(),
                        own,
                        tolerated ? Spread.of(measure) : null,
                        base == null ? -1 : joint.paths().indexOf(base.path()),
                        base == null ? Double.NaN : base.factor()));
            }
            return exchanges;
        } catch (UnfitValueException unfit) {
            UnfitValueException refusal =
                    new UnfitValueException("the swap '" + swap.name() + "' cannot be made: " + unfit.getMessage());
            refusal.initCause(unfit);
            throw refusal;
        }
    }

    /**
     * A value of which another is a part.
     *
     * @param text the part as written; absent where the file's own value is multiplied, in whose words it then stands
     */
    private record Base(String path, double factor, Optional<String> text) {}

    private Optional<Base> base(String path, String text) {
        Optional<Multiple> multiple = Multiple.parse(text);
        if (multiple.isPresent()) {
            return Optional.of(new Base(canonical(path), multiple.get().factor(), Optional.empty()));
        }
        Matcher part = PART.matcher(text);
        if (!part.matches()) {
            return Optional.empty();
        }
        NamedValue whole = vehicle.value(part.group(2).strip());
        double share = Double.parseDouble(part.group(1));
        Measure measure = whole.measure()
                .orElseThrow(() -> new UnfitValueException("'" + text + "': " + whole.path() + " is no number"));
        return Optional.of(
                new Base(whole.path(), share, Optional.of(Spread.written(measure.kind(), share * measure.value()))));
    }

    /** What tells one unknown from another: the path without the numbers of items, and the relative tolerance. */
    private static String unknown(String path, Measure measure) {
        double relative = measure.value() == 0 ? measure.tolerance() : measure.tolerance() / Math.abs(measure.value());
        return path.replaceAll("\\[\\d+]", "[]").replace("].wheels.", "].wheel.")
                + String.format(Locale.ROOT, " %.9g", relative);
    }

    /** The path by which a value goes where the file uses a part of itself again. */
    private String canonical(String path) {
        try {
            return vehicle.value(path).path();
        } catch (UnfitValueException none) {
            return path;
        }
    }

    private static void claim(String path, String swap, Map<String, String> takenBy) {
        takenBy.forEach((taken, by) -> {
            if (!by.equals(swap) && (within(path, taken) || within(taken, path))) {
                throw new UnfitValueException("the swaps '" + by + "' and '" + swap + "' both change " + path
                        + ", so that they cannot be told apart; leave one out, or state another alternative");
            }
        });
        takenBy.put(path, swap);
    }

    private static boolean within(String path, String whole) {
        return path.equals(whole) || path.startsWith(whole + ".") || path.startsWith(whole + "[");
    }

    @Override
    public List<Swap> swaps() {
        return swaps;
    }

    @Override
    public int uncertainValues() {
        return uncertain;
    }

    @Override
    public Scenario ride(int draw, double[] w, int choice) {
        double[] base = Arrays.copyOf(w, joint.size());
        boolean drawn = draw >= 0;
        Map<String, String> texts = drawn ? new LinkedHashMap<>(joint.texts(base)) : new LinkedHashMap<>();
        List<Double> values = joint.values(base);
        // a group comes after the values that were drawn inside it, or they would be put into it
        ride.instead().forEach((path, text) -> {
            texts.remove(path);
            texts.put(path, text);
        });
        for (int i = 0; i < exchanges.size(); i++) {
            if ((choice & 1 << i) == 0) {
                continue;
            }
            for (Exchange exchange : exchanges.get(i)) {
                texts.remove(exchange.path());
                texts.put(exchange.path(), text(exchange, w, values, drawn));
            }
        }
        Map<String, String> own =
                drawn ? ofRide.texts(Arrays.copyOfRange(w, ownFrom, uncertain)) : Map.<String, String>of();
        return ride.of(draw, texts, own);
    }

    private String text(Exchange exchange, double[] w, List<Double> values, boolean drawn) {
        if (drawn && exchange.own() >= 0) {
            return Spread.written(exchange.spread().kind(), exchange.spread().at(w[exchange.own()]));
        }
        if (drawn && exchange.drawnAs() >= 0) {
            return new Multiple(exchange.factor())
                    .of(joint.spreads().get(exchange.drawnAs()).kind(), values.get(exchange.drawnAs()));
        }
        return exchange.text();
    }
}

package org.ridewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ridewright.narrowing.Answer;
import org.ridewright.narrowing.Narrowing;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Vehicle;

/** Keys of a vehicle file and figures of an answer in words. */
public final class ValueNames {
    private static final Pattern ITEM = Pattern.compile("^(axles|seats|connections|hitches|load cases)\\[(\\d+)]");

    private static final Pattern PART = Pattern.compile("^\\.(springs|dampers)\\[(\\d+)]");

    private static final Pattern NAMED = Pattern.compile("([a-z ]+)\\[(.*)]");

    private ValueNames() {}

    /** The path with names in place of numbers, where the file has names. */
    public static String named(Vehicle vehicle, String path) {
        Matcher matcher = ITEM.matcher(path);
        if (!matcher.find()) {
            return path;
        }
        int i = Integer.parseInt(matcher.group(2));
        String name =
                switch (matcher.group(1)) {
                    case "axles" -> vehicle.axles().get(i).name();
                    case "seats" -> vehicle.seats().get(i).name();
                    case "connections" -> vehicle.connections().get(i).name();
                    case "hitches" -> vehicle.hitches().get(i).name();
                    default -> vehicle.loadCases().get(i).name();
                };
        String rest = path.substring(matcher.end());
        return matcher.group(1) + "[" + name + "]"
                + (matcher.group(1).equals("axles") ? part(vehicle.axles().get(i), rest) : rest);
    }

    /**
     * A path in words for the yard: what it belongs to, then what of it, as in {@code front springs: rate}. A part that is named after its
     * axle is not told twice.
     */
    public static String plain(Vehicle vehicle, String path) {
        List<String> owners = new ArrayList<>();
        List<String> rest = new ArrayList<>();
        for (String step : named(vehicle, path).split("\\.(?![^\\[]*])", -1)) {
            Matcher item = NAMED.matcher(step);
            if (!item.matches()) {
                rest.add(step);
            } else if (item.group(1).equals("axles")) {
                owners.add(item.group(2) + " axle");
            } else {
                String one = item.group(2).isBlank() ? item.group(1) : item.group(2);
                if (!owners.isEmpty() && item.group(1).matches("springs|dampers")) {
                    String axle = owners.remove(0).replaceFirst(" axle$", "");
                    one = one.startsWith(axle) ? one : axle + ": " + one;
                }
                owners.add(one);
            }
        }
        String owner = owners.isEmpty() && rest.size() > 1 ? rest.remove(0) : String.join(", ", owners);
        String value = String.join(", ", rest);
        return owner.isEmpty() ? value : value.isEmpty() ? owner : owner + ": " + value;
    }

    private static String part(Axle axle, String rest) {
        Matcher matcher = PART.matcher(rest);
        if (!matcher.find()) {
            return rest;
        }
        int i = Integer.parseInt(matcher.group(2));
        String name = matcher.group(1).equals("springs")
                ? axle.springs().get(i).name()
                : axle.dampers().get(i).name();
        return "." + matcher.group(1) + "[" + name + "]" + rest.substring(matcher.end());
    }

    /** Each figure with its standard uncertainty. */
    public static List<String> figures(Narrowing narrowing) {
        List<String> told = new ArrayList<>();
        for (int f = 0; f < narrowing.figures().size(); f++) {
            Answer.Figure figure = narrowing.figures().get(f);
            told.add(String.format(
                    Locale.ROOT,
                    "%s: %.3g ± %.2g %s",
                    figure.name(),
                    narrowing.central().get(f),
                    narrowing.uncertainty().get(f),
                    figure.unit()));
        }
        return told;
    }
}

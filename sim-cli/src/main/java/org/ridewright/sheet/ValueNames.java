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

package org.ridewright.vehicle.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/** Collects faults, and words those that many values share. */
public final class Faults {
    /** In one metre per second; speeds are told as people tell them. */
    private static final double KILOMETRES_PER_HOUR = 3.6;

    private final List<Fault> found = new ArrayList<>();

    /** Everything found so far. */
    public List<Fault> found() {
        return List.copyOf(found);
    }

    /** Adds a fault; the judgement rests on the values at {@code restsOn} besides. */
    public void add(String path, String value, String fault, String expected, String fix, String... restsOn) {
        found.add(new Fault(path, value, fault, expected, fix, List.of(restsOn)));
    }

    /** The value must be above zero. */
    public void positive(String path, Measure measure) {
        if (!(measure.value() > 0)) {
            String fix = measure.value() < 0 ? withoutSign(measure) : "write the value as measured";
            add(path, measure.written(), sign(measure), named(measure) + " > 0" + unit(measure), fix);
        }
    }

    /** As the other, where there is a value. */
    public void positive(String path, Optional<Measure> measure) {
        measure.ifPresent(value -> positive(path, value));
    }

    /** The value must not be below zero. */
    public void notNegative(String path, Measure measure) {
        if (measure.value() < 0) {
            add(path, measure.written(), "is negative", named(measure) + " ≥ 0" + unit(measure), withoutSign(measure));
        }
    }

    /** As the other, where there is a value. */
    public void notNegative(String path, Optional<Measure> measure) {
        measure.ifPresent(value -> notNegative(path, value));
    }

    /**
     * The value must lie between two bounds, themselves allowed.
     *
     * @param fix what to try, as an instruction
     */
    public void within(String path, Measure measure, double least, double most, String fix) {
        if (measure.value() < least || measure.value() > most) {
            double times = measure.kind() == QuantityKind.SPEED ? KILOMETRES_PER_HOUR : 1;
            String from = plain(least * times);
            String to = plain(most * times);
            String bound = measure.value() < least ? "is less than " + from : "is more than " + to;
            String range = named(measure) + " from " + from + " to " + to + unit(measure);
            add(path, measure.written(), bound + unit(measure), range, fix);
        }
    }

    /** Names must be given and differ; those at {@code paths} are {@code names}. */
    public void distinct(List<String> names, List<String> paths, String called) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            if (!seen.add(names.get(i))) {
                String first = paths.get(names.indexOf(names.get(i)));
                add(
                        paths.get(i),
                        names.get(i),
                        "is already the name of " + first.substring(0, first.lastIndexOf('.')),
                        "a name of its own for each " + called,
                        "write another name for one of them",
                        first);
            }
        }
    }

    /** A reference must name one of those known. */
    public void known(String path, String name, Collection<String> known, String called) {
        if (!known.contains(name)) {
            String fix = NearestWord.to(name, known)
                    .map(near -> "write " + near)
                    .orElse(known.isEmpty() ? "describe the " + called + " first" : "choose one of these");
            String expected = known.isEmpty() ? "a name, but there is no " + called : String.join(" or ", known);
            add(path, name, "is not the name of " + article(called) + " " + called, expected, fix);
        }
    }

    static String article(String noun) {
        return "aeiou".indexOf(noun.charAt(0)) >= 0 ? "an" : "a";
    }

    /** A number to three figures. */
    public static String plain(double value) {
        double magnitude = Math.abs(value);
        if (magnitude == Math.rint(magnitude) || magnitude >= 1000) {
            return String.format(Locale.ROOT, "%.0f", value);
        }
        int places = magnitude >= 100 ? 1 : magnitude >= 1 ? 2 : 3;
        return String.format(Locale.ROOT, "%." + places + "f", value).replaceAll("\\.?0+$", "");
    }

    static String unit(Measure measure) {
        String unit =
                measure.kind() == QuantityKind.SPEED ? "km/h" : measure.kind().siUnit();
        return unit.equals("1") ? "" : " " + unit;
    }

    private static String named(Measure measure) {
        String label = measure.kind().label();
        return article(label) + " " + label;
    }

    private static String sign(Measure measure) {
        return measure.value() == 0 ? "is zero" : "is negative";
    }

    private static String withoutSign(Measure measure) {
        String bare = measure.written().replaceFirst("^[-−]\\s*", "");
        return bare.equals(measure.written()) ? "" : "write " + bare;
    }
}

package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ridewright.ride.RideResult;

/**
 * A remark on one ride test or several that differs between them in its measured numbers alone.
 *
 * @param text the remark, with the range of each number that differs
 * @param rides which ride tests it concerns, in words, those of one vehicle and load together
 */
public record RemarkGroup(String text, List<String> rides) {
    /** Measured numbers: with decimals, or before a unit; others belong to names. */
    private static final Pattern NUMBER =
            Pattern.compile("(?<![\\w.])\\d+\\.\\d+(?!\\w|\\.\\d)|(?<![\\w.])\\d+(?= (?:N|%|km/h|mph)(?!\\w))");

    public RemarkGroup {
        rides = List.copyOf(rides);
    }

    /** The remarks of all ride tests, each said once, in the order in which they come first. */
    public static List<RemarkGroup> of(List<RideResult> results) {
        return of(results, UnaryOperator.identity());
    }

    /** As the other, of remarks that are shortened first. */
    public static List<RemarkGroup> of(List<RideResult> results, UnaryOperator<String> shortened) {
        Map<String, List<String>> texts = new LinkedHashMap<>();
        Map<String, List<RideResult>> rides = new LinkedHashMap<>();
        for (RideResult result : results) {
            for (String whole : result.remarks()) {
                String remark = shortened.apply(whole);
                String alike = NUMBER.matcher(remark).replaceAll("#");
                texts.computeIfAbsent(alike, k -> new ArrayList<>()).add(remark);
                rides.computeIfAbsent(alike, k -> new ArrayList<>()).add(result);
            }
        }
        List<RemarkGroup> groups = new ArrayList<>();
        texts.forEach((alike, remarks) -> groups.add(new RemarkGroup(
                merged(remarks),
                results.size() > 1 && rides.get(alike).size() == results.size()
                        ? List.of("every ride test")
                        : named(rides.get(alike)))));
        return groups;
    }

    /** The first text, with the least and the greatest of each number that is not the same in all. */
    private static String merged(List<String> remarks) {
        List<List<String>> numbers = remarks.stream()
                .map(text ->
                        NUMBER.matcher(text).results().map(MatchResult::group).toList())
                .toList();
        int[] next = {0};
        return NUMBER.matcher(remarks.get(0)).replaceAll(found -> {
            int position = next[0]++;
            List<String> each = numbers.stream()
                    .map(all -> all.get(position))
                    .sorted(Comparator.comparingDouble(Double::parseDouble))
                    .toList();
            String least = each.get(0);
            String most = each.get(each.size() - 1);
            return Matcher.quoteReplacement(least.equals(most) ? least : least + " to " + most);
        });
    }

    private static List<String> named(List<RideResult> rides) {
        Map<String, List<String>> bySubject = new LinkedHashMap<>();
        for (RideResult ride : rides) {
            RideName name = RideName.of(ride);
            bySubject.computeIfAbsent(name.subject(), k -> new ArrayList<>()).add(name.road() + " at " + name.speed());
        }
        return bySubject.entrySet().stream()
                .map(e -> e.getKey() + ": " + e.getValue().stream().collect(Collectors.joining("; ")))
                .toList();
    }
}

package org.ridewright.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Why runs failed: reasons that differ in their numbers alone count as one. */
public final class Reasons {
    /** Kinds of reasons that are told apart; memory does not grow with the number of runs. */
    private static final int MOST = 100;

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?");
    private static final Pattern LONG_NUMBER = Pattern.compile("\\d+\\.\\d+");

    private final Map<String, Kind> kinds = new LinkedHashMap<>();

    private static final class Kind {
        private final String first;
        private long count;

        Kind(String first) {
            this.first = first;
        }
    }

    /** Takes the reason of one more run. */
    public void add(String reason) {
        String kind = NUMBER.matcher(reason).replaceAll("#");
        if (kinds.size() < MOST || kinds.containsKey(kind)) {
            kinds.computeIfAbsent(kind, k -> new Kind(reason)).count++;
        }
    }

    /** The commonest, at most {@code most} of them, each with how often it was, {@code 27 times: ...}, and numbers of three figures. */
    public List<String> commonest(int most) {
        List<Kind> sorted = new ArrayList<>(kinds.values());
        sorted.sort(Comparator.comparingLong((Kind k) -> k.count).reversed());
        return sorted.stream()
                .limit(most)
                .map(k -> (k.count == 1 ? "once: " : k.count + " times, for instance: ") + rounded(k.first))
                .toList();
    }

    /** With three figures of every number that has decimals. */
    static String rounded(String reason) {
        return LONG_NUMBER.matcher(reason).replaceAll(found -> {
            BigDecimal number = new BigDecimal(found.group());
            int digits = Math.max(3, number.precision() - number.scale());
            return number.precision() <= digits
                    ? found.group()
                    : number.round(new MathContext(digits)).stripTrailingZeros().toPlainString();
        });
    }
}

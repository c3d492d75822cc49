package org.ridewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ridewright.quantity.UnfitValueException;

/**
 * An ingredient of a vehicle with its alternative.
 *
 * @param name of the ingredient, as in {@code friction}
 * @param alternative what takes its place, in a few words that can begin a sentence: {@code pneumatic tyres on the same wheels}
 * @param changes that make the swap, at least one
 */
public record Swap(String name, String alternative, List<Change> changes) {
    public Swap {
        changes = List.copyOf(changes);
    }

    /** {@code wheel size (wheels of 60 cm)}. */
    private static final Pattern WORDED = Pattern.compile("([^()]+)\\((.+)\\)");

    /**
     * Reads a swap as an option of the command writes it: {@code friction: axles[*].springs[*].friction.share of load = × 0.3; ...}, where
     * wanted with words of its own for the alternative, {@code friction (rollers in place of shackles): ...}.
     *
     * @throws UnfitValueException if it is written otherwise
     */
    public static Swap parse(String option) {
        int colon = option.indexOf(':');
        String name = colon < 0 ? "" : option.substring(0, colon).strip();
        List<Change> changes = new ArrayList<>();
        for (String part : option.substring(colon + 1).split(";", -1)) {
            int equals = part.indexOf('=');
            if (name.isEmpty() || equals < 0 || part.substring(0, equals).isBlank()) {
                throw new UnfitValueException("'" + option
                        + "' is no swap; write NAME: PATH = VALUE, as in 'friction: axles[*].springs[*].friction.share of load = × 0.5',"
                        + " several changes with ; between them");
            }
            changes.add(new Change(
                    part.substring(0, equals).strip(),
                    part.substring(equals + 1).strip()));
        }
        Matcher worded = WORDED.matcher(name);
        if (worded.matches()) {
            return new Swap(worded.group(1).strip(), worded.group(2).strip(), changes);
        }
        // what is exchanged stands beside it in the report; paths make no sentence
        return new Swap(name, "the exchange “" + name + "”", changes);
    }

    /**
     * Reads a text file of swaps, one a line, written as for {@link #parse}; empty lines and those that begin with {@code #} are not looked at.
     *
     * @param file its name, for who made a mistake in it
     * @throws UnfitValueException if a line is no swap
     */
    public static List<Swap> parse(String file, List<String> lines) {
        List<Swap> swaps = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                try {
                    swaps.add(parse(line));
                } catch (UnfitValueException none) {
                    UnfitValueException refusal =
                            new UnfitValueException(file + ":" + (i + 1) + ": " + none.getMessage());
                    refusal.initCause(none);
                    throw refusal;
                }
            }
        }
        return swaps;
    }

    /** All changes, as options of the command write them. */
    public String words() {
        return changes.stream().map(Change::words).collect(Collectors.joining("; "));
    }
}

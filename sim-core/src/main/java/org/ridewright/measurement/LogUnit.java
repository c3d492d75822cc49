package org.ridewright.measurement;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Units in which loggers give accelerations. */
public enum LogUnit {
    METRE(
            "m/s²", 1, "m/s²", "m/s^2", "m/s2", "m/s**2", "ms-2", "ms^-2", "m s-2", "m s^-2", "m·s-2", "mps2", "ms2",
            "m/s/s", "m/sec2"),
    GRAVITY("g", 9.80665, "g", "g0", "gn", "gs", "standard gravity"),
    MILLI_GRAVITY("mg", 9.80665e-3, "mg", "milli-g", "millig", "milli g"),
    CENTIMETRE("cm/s²", 0.01, "cm/s²", "cm/s^2", "cm/s2", "gal"),
    MILLIMETRE("mm/s²", 1e-3, "mm/s²", "mm/s^2", "mm/s2"),
    FOOT("ft/s²", 0.3048, "ft/s²", "ft/s^2", "ft/s2");

    private final String word;
    private final double factor;

    @SuppressWarnings("ImmutableEnumChecker") // unmodifiable
    private final List<String> spellings;

    LogUnit(String word, double factor, String... spellings) {
        this.word = word;
        this.factor = factor;
        this.spellings = List.of(spellings);
    }

    /** As messages write it. */
    public String word() {
        return word;
    }

    /** m/s² in one of it. */
    public double factor() {
        return factor;
    }

    /** Whether loggers often use it, so that it may be suggested. */
    boolean isUsual() {
        return this == METRE || this == GRAVITY || this == MILLI_GRAVITY;
    }

    /** The unit of a spelling, whatever its letter case and spaces. */
    public static Optional<LogUnit> of(String spelling) {
        String plain =
                spelling.strip().toLowerCase(Locale.ROOT).replace('⋅', '·').replaceAll("\\s+", " ");
        return Arrays.stream(values())
                .filter(unit -> unit.spellings.contains(plain))
                .findFirst();
    }
}

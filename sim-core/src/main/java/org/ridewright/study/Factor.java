package org.ridewright.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.quantity.Spread;

/** Something that varies in a study: how a coordinate becomes the words that stand in the files. */
public sealed interface Factor {
    /** What it is called in figures and tables. */
    String name();

    /** Unit of {@link #shown}; {@code 1} of pure numbers, empty of words. */
    String unit();

    /** Paths of the values, all of which get the same words. */
    List<String> paths();

    /** What stands in the files at a coordinate. */
    String text(double coordinate);

    /** As in a table, without the unit. */
    default String cell(double coordinate) {
        return Double.toString(shown(coordinate));
    }

    /** As on an axis (unit). */
    default double shown(double coordinate) {
        return coordinate;
    }

    /** Whether {@link #shown} is a multiple of what stands in the files. */
    default boolean isMultiple() {
        return this instanceof Multiple
                || (this instanceof Listed listed && listed.words().get(0).startsWith("×"));
    }

    /** Whether equal ratios are equal steps. */
    default boolean isByRatio() {
        return (this instanceof Range range && range.byRatio())
                || (this instanceof Multiple multiple && multiple.byRatio());
    }

    /** A value on the axis as sentences have it, {@code 12 km/h}, with three digits. */
    default String spoken(double shown) {
        if (unit().equals("1") && !isMultiple() && shown == Math.rint(shown) && Math.abs(shown) < 1e15) {
            // a seed or count has all its digits
            return Long.toString(Math.round(shown));
        }
        String number = new BigDecimal(shown)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
        return unit().isEmpty() || unit().equals("1") ? number : number + " " + unit();
    }

    /** A coordinate as sentences have it. */
    default String level(double coordinate) {
        return spoken(shown(coordinate));
    }

    /** The coordinate at a share of the range from 0 to 1. */
    double at(double share);

    /** Words by path. */
    default Map<String, String> texts(double coordinate) {
        Map<String, String> texts = new LinkedHashMap<>();
        paths().forEach(path -> texts.put(path, text(coordinate)));
        return texts;
    }

    /** With its unit, as at the head of a table's column. */
    default String head() {
        return unit().isEmpty() || unit().equals("1") ? name() : name() + " (" + unit() + ")";
    }

    /** A value's words in full precision, {@code 4.5 km/h}. */
    private static String written(double value, String unit) {
        return unit.equals("1") ? Double.toString(value) : value + " " + unit;
    }

    /**
     * A value between two ends; the coordinate is the value.
     *
     * @param unit in which the file's author states it
     * @param from lower end (unit)
     * @param to upper end (unit)
     * @param byRatio whether equal ratios, rather than differences, are equal steps
     * @param whole whether it is rounded to a whole number, such as a seed
     */
    record Range(String name, String unit, List<String> paths, double from, double to, boolean byRatio, boolean whole)
            implements Factor {
        public Range {
            paths = List.copyOf(paths);
        }

        @Override
        public String text(double coordinate) {
            return whole ? Long.toString(Math.round(coordinate)) : written(coordinate, unit);
        }

        @Override
        public double at(double share) {
            if (share <= 0 || share >= 1) {
                return share <= 0 ? from : to;
            }
            return byRatio ? from * Math.pow(to / from, share) : from + (to - from) * share;
        }
    }

    /**
     * A multiple of what stands in the files; the coordinate is the multiple.
     *
     * @param from least multiple
     * @param to greatest multiple
     * @param byRatio whether equal ratios are equal steps
     */
    record Multiple(String name, List<String> paths, double from, double to, boolean byRatio) implements Factor {
        public Multiple {
            paths = List.copyOf(paths);
        }

        @Override
        public String unit() {
            return "1";
        }

        @Override
        public String text(double coordinate) {
            return "× " + coordinate;
        }

        @Override
        public String spoken(double shown) {
            return "× " + Factor.super.spoken(shown);
        }

        @Override
        public double at(double share) {
            return new Range(name, "1", paths, from, to, byRatio, false).at(share);
        }
    }

    /**
     * One of some listed words; the coordinate is the number of the word.
     *
     * @param words as the file's author lists them, values with their unit
     * @param shown the same as numbers (unit); the numbers of the words where they are no values
     */
    record Listed(String name, String unit, List<String> paths, List<String> words, List<Double> shown)
            implements Factor {
        public Listed {
            paths = List.copyOf(paths);
            words = List.copyOf(words);
            shown = List.copyOf(shown);
        }

        @Override
        public String text(double coordinate) {
            return words.get((int) coordinate);
        }

        @Override
        public String spoken(double shown) {
            return (words.get(0).startsWith("×") ? "× " : "") + Factor.super.spoken(shown);
        }

        @Override
        public String level(double coordinate) {
            return unit.isEmpty() ? text(coordinate) : spoken(shown(coordinate));
        }

        @Override
        public String cell(double coordinate) {
            return unit.isEmpty() ? text(coordinate) : Double.toString(shown(coordinate));
        }

        @Override
        public double shown(double coordinate) {
            return shown.get((int) coordinate);
        }

        @Override
        public double at(double share) {
            return Math.min(words.size() - 1, (int) (share * words.size()));
        }
    }

    /**
     * A value with a tolerance; the coordinate is its departure in standard deviations.
     *
     * @param spread of the value
     * @param paths one
     */
    record Tolerated(String name, List<String> paths, Spread spread) implements Factor {
        /** Share of the distribution on either side that a screening leaves out, since it has no end. */
        private static final double TAIL = 0.05;

        public Tolerated {
            paths = List.copyOf(paths);
        }

        @Override
        public String unit() {
            return spread.kind().siUnit();
        }

        @Override
        public String text(double coordinate) {
            return Spread.written(spread.kind(), spread.at(coordinate));
        }

        @Override
        public double shown(double coordinate) {
            return spread.at(coordinate);
        }

        @Override
        public double at(double share) {
            return share <= 0 || share >= 1 ? Normal.quantile(share <= 0 ? TAIL : 1 - TAIL) : Normal.quantile(share);
        }
    }
}

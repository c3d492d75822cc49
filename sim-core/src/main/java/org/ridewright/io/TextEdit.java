package org.ridewright.io;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.UnfitValueException;

/** Exchanges values in the text of a vehicle file and leaves everything else as it stands. */
final class TextEdit {
    private static final Pattern DECIMAL =
            Pattern.compile("([-+]?[0-9]+(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]+)?)\\s*([^±(0-9]*)");
    private static final Pattern TIMES = Pattern.compile("(?:times|×)(?:\\s+the\\s+rate)?\\s*$");
    private static final MathContext FIGURES = new MathContext(6);

    private final String text;
    private final ValueTree tree;
    private final boolean json;
    private final int further;

    /** @param further decimals beyond the second figure of the tolerance */
    TextEdit(String text, ValueTree tree, Path file, int further) {
        this.further = further;
        this.text = text;
        this.tree = tree;
        json = file.toString().toLowerCase(Locale.ROOT).endsWith(".json");
    }

    /** What is to stand at each path. */
    Map<String, String> words(Map<String, Measure> values) {
        Map<String, String> words = new LinkedHashMap<>();
        values.forEach((path, measure) -> {
            String own = tree.value(path).path();
            words.put(own, words(tree.scalar(own), measure));
        });
        return words;
    }

    private record Change(int from, int to, String words) {}

    String with(Map<String, Measure> values, List<String> alongside, double[][] correlation, String from) {
        Map<String, Measure> byPath = new LinkedHashMap<>();
        values.forEach((path, measure) -> byPath.put(tree.value(path).path(), measure));
        int[] lines = lineStarts();
        List<Change> changes = new ArrayList<>();
        byPath.forEach((path, measure) -> changes.add(change(tree.scalar(path), measure, lines)));
        changes.sort(Comparator.comparingInt(Change::from).reversed());
        StringBuilder edited = new StringBuilder(text);
        changes.forEach(change -> edited.replace(change.from(), change.to(), change.words()));
        List<String> paths = new ArrayList<>(byPath.keySet());
        alongside.forEach(path -> paths.add(tree.value(path).path()));
        return block(edited.toString(), paths, correlation, from);
    }

    private Change change(Node.Scalar scalar, Measure measure, int[] lines) {
        int from = lines[scalar.spot().line() - 1] + scalar.spot().column() - 1;
        int to = lines[scalar.end().line() - 1] + scalar.end().column() - 1;
        String raw = text.substring(from, Math.min(to, text.length()));
        int lead = raw.startsWith("&") ? raw.indexOf(' ') + 1 : 0;
        String body = raw.substring(lead).stripTrailing();
        char first = body.isEmpty() ? ' ' : body.charAt(0);
        String quote = first == '"' || first == '\'' ? String.valueOf(first) : "";
        return new Change(from + lead, from + lead + body.length(), quote + words(scalar, measure) + quote);
    }

    /** In the unit that the file had where it can be told, else in the usual one. */
    private String words(Node.Scalar scalar, Measure measure) {
        Matcher times = TIMES.matcher(scalar.text());
        String suffix = times.find() ? " times" : "";
        String old = suffix.isEmpty() ? scalar.text() : scalar.text().substring(0, times.start());
        String amount = old.split("±|\\+\\s*/?\\s*-|\\(", 2)[0].strip();
        Matcher decimal = DECIMAL.matcher(amount);
        String clause = " (" + measure.provenance().word() + ")";
        if (decimal.matches()) {
            String unit = decimal.group(2).strip();
            double inSi = unit.isEmpty()
                    ? 1
                    : Measures.parse("1 " + unit, measure.kind()).value();
            String number = figures(measure.value() / inSi, measure.tolerance() / inSi);
            String spread = measure.tolerance() > 0
                    ? " ± " + decimals(measure.tolerance() / inSi, places(measure.tolerance() / inSi) + further)
                    : "";
            String after = unit.isEmpty() ? "" : " " + unit;
            boolean percent = unit.equals("%") || unit.equals("percent");
            return number + (percent ? after : "") + spread + after + clause + suffix;
        }
        return Measures.format(measure) + clause + suffix;
    }

    /** To the second figure of the tolerance; to six figures where there is none. */
    private String figures(double value, double tolerance) {
        return tolerance > 0
                ? decimals(value, places(tolerance) + further)
                : BigDecimal.valueOf(value).round(FIGURES).toPlainString();
    }

    private static int places(double tolerance) {
        return Math.max(0, 1 - (int) Math.floor(Math.log10(tolerance)));
    }

    private static String decimals(double value, int places) {
        return BigDecimal.valueOf(value)
                .setScale(places, RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    private String block(String edited, List<String> paths, double[][] correlation, String from) {
        if (correlation.length != paths.size()) {
            throw new IllegalArgumentException(
                    "need " + paths.size() + " rows of correlations, got " + correlation.length);
        }
        List<String> rows = Arrays.stream(correlation)
                .map(row -> Arrays.stream(row)
                        .mapToObj(r -> r == 1 ? "1" : String.format(Locale.ROOT, "%.9f", r))
                        .collect(Collectors.joining(", ", "[", "]")))
                .toList();
        if (json) {
            return jsonBlock(edited, paths, rows, from);
        }
        StringBuilder block = new StringBuilder(withoutBlock(edited).stripTrailing());
        block.append(
                "\n\n# Written by the program: which values were fitted together, and the correlation of their errors.\n");
        block.append("calibration:\n  from: ").append(quoted(from)).append("\n  of:\n");
        paths.forEach(path -> block.append("    - ").append(quoted(path)).append('\n'));
        block.append("  correlation:\n");
        rows.forEach(row -> block.append("    - ").append(row).append('\n'));
        return block.toString();
    }

    private static String jsonBlock(String edited, List<String> paths, List<String> rows, String from) {
        int end = edited.lastIndexOf('}');
        if (Pattern.compile("\"calibration\"\\s*:").matcher(edited).find()) {
            throw new UnfitValueException(
                    "the file holds a calibration already, which in JSON cannot be replaced; remove it from the file first");
        }
        return edited.substring(0, end).stripTrailing() + ",\n  \"calibration\": {\n    \"from\": " + quoted(from)
                + ",\n    \"of\": ["
                + paths.stream().map(TextEdit::quoted).collect(Collectors.joining(", ")) + "],\n    \"correlation\": ["
                + String.join(", ", rows) + "]\n  }\n}\n";
    }

    private static String quoted(String words) {
        return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\p{Cntrl}", " ") + '"';
    }

    /** Takes out the block of an earlier calibration, to the next key at the beginning of a line. */
    private static String withoutBlock(String yaml) {
        List<String> kept = new ArrayList<>();
        boolean within = false;
        for (String line : yaml.split("\n", -1)) {
            if (line.startsWith(CalibrationBlock.KEY + ":")) {
                within = true;
                if (!kept.isEmpty() && kept.get(kept.size() - 1).startsWith("# Written by the program: which values")) {
                    kept.remove(kept.size() - 1);
                }
            } else if (within && !line.isBlank() && !Character.isWhitespace(line.charAt(0)) && line.charAt(0) != '#') {
                within = false;
            }
            if (!within) {
                kept.add(line);
            }
        }
        return String.join("\n", kept);
    }

    private int[] lineStarts() {
        List<Integer> starts = new ArrayList<>(List.of(0));
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '\n') {
                starts.add(i + 1);
            }
        }
        return starts.stream().mapToInt(Integer::intValue).toArray();
    }
}

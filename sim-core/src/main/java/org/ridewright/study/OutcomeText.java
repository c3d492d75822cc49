package org.ridewright.study;

import java.util.ArrayList;
import java.util.List;

/** Outcomes as a piece of one line, numbers to the last bit. */
final class OutcomeText {
    private static final String BETWEEN_LINES = "|";
    private static final String BETWEEN_VALUES = ";";
    private static final int LABELS = 4;

    private OutcomeText() {}

    static String write(Outcome outcome) {
        if (!outcome.failure().isEmpty()) {
            return "!" + escaped(outcome.failure());
        }
        List<String> lines = new ArrayList<>();
        for (Outcome.Line line : outcome.tests()) {
            List<String> parts = new ArrayList<>();
            line.labels().forEach(label -> parts.add(escaped(label)));
            if (line.failure().isEmpty()) {
                line.answers().forEach(answer -> parts.add(Double.toString(answer)));
            } else {
                parts.add("!" + escaped(line.failure()));
            }
            lines.add(String.join(BETWEEN_VALUES, parts));
        }
        return String.join(BETWEEN_LINES, lines);
    }

    static Outcome read(String text) {
        if (text.startsWith("!")) {
            return Outcome.failed(plain(text.substring(1)));
        }
        List<Outcome.Line> lines = new ArrayList<>();
        for (String line : text.isEmpty() ? new String[0] : text.split("\\|", -1)) {
            String[] parts = line.split(BETWEEN_VALUES, -1);
            List<String> labels = new ArrayList<>();
            for (int i = 0; i < LABELS; i++) {
                labels.add(plain(parts[i]));
            }
            if (parts.length > LABELS && parts[LABELS].startsWith("!")) {
                lines.add(new Outcome.Line(labels, List.of(), plain(parts[LABELS].substring(1))));
            } else {
                List<Double> answers = new ArrayList<>();
                for (int i = LABELS; i < parts.length; i++) {
                    answers.add(Double.parseDouble(parts[i]));
                }
                lines.add(new Outcome.Line(labels, answers, ""));
            }
        }
        return new Outcome(lines, "");
    }

    private static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        for (char c : text.toCharArray()) {
            switch (c) {
                case '\\' -> out.append("\\\\");
                case '\t' -> out.append("\\t");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '|' -> out.append("\\p");
                case ';' -> out.append("\\s");
                case '!' -> out.append("\\e");
                default -> out.append(c);
            }
        }
        return out.toString();
    }

    private static String plain(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\' && i + 1 < text.length()) {
                i++;
                out.append(
                        switch (text.charAt(i)) {
                            case 't' -> '\t';
                            case 'n' -> '\n';
                            case 'r' -> '\r';
                            case 'p' -> '|';
                            case 's' -> ';';
                            case 'e' -> '!';
                            default -> text.charAt(i);
                        });
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }
}

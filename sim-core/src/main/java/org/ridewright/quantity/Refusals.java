package org.ridewright.quantity;

import java.util.stream.Collectors;

/**
 * Words the refusals of one text, so that every one names the kind, the text and a way out.
 *
 * @param kind what was to be read
 * @param written the whole text, as written
 */
record Refusals(QuantityKind kind, String written) {
    /** The text cannot be read for {@code reason}; {@code hint} may be empty. */
    QuantityFormatException because(String reason, String part, String hint) {
        String remedy = hint.isEmpty() ? "accepted are " + expected() : hint;
        return new QuantityFormatException(
                kind.label() + " '" + written + "' " + reason + "; " + remedy, part, expected(), hint);
    }

    /** A number stands without a unit where one is needed. */
    QuantityFormatException noUnit(String number) {
        String choices = KindForms.of(kind).units().stream()
                .limit(3)
                .map(unit -> number + " " + unit)
                .collect(Collectors.joining(", "));
        return because("has no unit", number, "write it as " + choices + ", whichever is meant");
    }

    /** {@code unit} is of another kind, or of none. */
    QuantityFormatException otherKind(String unit, WrittenUnit meaning) {
        String found = KindForms.describing(meaning)
                .map(other -> withArticle(other.label()) + " (" + unit + ")")
                .orElse("the unit " + unit);
        return because(
                "is not " + withArticle(kind.label()) + ": " + kind.label() + " expected, got " + found,
                unit,
                turnHint(meaning));
    }

    /** {@code word} is no unit known here. */
    QuantityFormatException unknownUnit(String unit, String word) {
        String suggestion = Spelling.nearest(unit, KindForms.of(kind).units())
                .or(() -> Spelling.nearest(word, KindForms.of(kind).units()))
                .or(() -> Spelling.nearest(word, UnitTable.words()))
                .map(near -> "did you mean " + near + "?")
                .orElse("");
        return because("has an unknown unit '" + word + "'", word, suggestion);
    }

    private String expected() {
        return KindForms.of(kind).examples().stream().limit(4).collect(Collectors.joining(", "));
    }

    private String turnHint(WrittenUnit meaning) {
        if (kind == QuantityKind.FREQUENCY && meaning.angle() == 1) {
            return "divide rad/s by 2π, or °/s by 360, to get Hz";
        }
        if (meaning.over(UnitTable.radian()).measures(kind)) {
            return "it is per angle: add /rad or /deg";
        }
        return "";
    }

    private static String withArticle(String label) {
        return ("aeiou".indexOf(label.charAt(0)) >= 0 ? "an " : "a ") + label;
    }
}

package org.ridewright.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.quantity.UnfitValueException;

/**
 * A question to be answered by many runs.
 *
 * @param about in the author's words; may be empty
 * @param variants at least one; methods other than a comparison use the first
 * @param questions at least one
 * @param fingerprint of all files that the study rests on; runs of one fingerprint can stand in for each other
 * @param answer sentences to be made from the numbers, if the author wrote any
 */
public record Study(
        String name,
        String about,
        List<Variant> variants,
        List<Question> questions,
        Method method,
        String fingerprint,
        Optional<Answer> answer) {
    public Study {
        variants = List.copyOf(variants);
        questions = List.copyOf(questions);
    }

    /** Without sentences of its own. */
    public Study(
            String name,
            String about,
            List<Variant> variants,
            List<Question> questions,
            Method method,
            String fingerprint) {
        this(name, about, variants, questions, method, fingerprint, Optional.empty());
    }

    /** Its runs; of a search, which finds its runs as it goes, none but the first. */
    public Schedule schedule() {
        return Schedules.of(this);
    }

    /**
     * Vehicle, load case, road and speed of each ride test of a variant before anything varies.
     *
     * @param variant its number
     */
    public List<List<String>> testsAsWritten(int variant) {
        return TestLabels.of(variants.get(variant));
    }

    /**
     * Where the first variant stands on a factor's axis (unit of the factor).
     *
     * @return absent for words, and where the values of several paths differ
     */
    public OptionalDouble asWritten(Factor factor) {
        Variant variant = variants.get(0);
        if (factor.isMultiple()) {
            return OptionalDouble.of(1);
        }
        String path = factor.paths().get(0);
        try {
            NamedValue value = variant.scenario().value(path);
            String text = variant.texts().getOrDefault(path, value.written());
            if (value.measure().isEmpty()) {
                return factor.unit().equals("1") && text.matches("\\d+")
                        ? OptionalDouble.of(Double.parseDouble(text))
                        : OptionalDouble.empty();
            }
            QuantityKind kind = value.measure().get().kind();
            double si = variant.texts().containsKey(path)
                    ? Measures.parse(text, kind).value()
                    : value.measure().get().value();
            double unit = factor.unit().equals("1")
                    ? 1
                    : Measures.parse("1 " + factor.unit(), kind).value();
            return OptionalDouble.of(si / unit);
        } catch (UnfitValueException | QuantityFormatException notOne) {
            return OptionalDouble.empty();
        }
    }
}

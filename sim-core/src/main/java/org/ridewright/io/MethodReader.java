package org.ridewright.io;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Correlated;
import org.ridewright.study.Draws;
import org.ridewright.study.Factor;
import org.ridewright.study.Method;
import org.ridewright.study.Question;
import org.ridewright.study.Uncertain;
import org.ridewright.study.Variant;

/** Reads what a study does with its base. */
final class MethodReader {
    private static final int MOST_RUNS = 100_000_000;
    private static final Words<Draws.Kind> DRAWS =
            Words.of("a kind of draws", List.of(Draws.Kind.values()), Draws.Kind::word);
    private static final Words<Method.By> SIDES = Words.of(
            "what is compared",
            List.of(Method.By.VEHICLES, Method.By.LOAD_CASES),
            by -> by == Method.By.VEHICLES ? "vehicles" : "load cases");
    private static final Words<Boolean> SENSITIVITIES =
            Words.of("a method of sensitivity", List.of(false, true), indices -> indices ? "sobol indices" : "morris");

    private final VariantReader.Base base;
    private final VariantReader variantReader;
    private final FactorReader factors;
    private final List<Question> questions;
    private final List<Variant> variants = new ArrayList<>();

    MethodReader(VariantReader.Base base, VariantReader variantReader, List<Question> questions) {
        this.base = base;
        this.variantReader = variantReader;
        this.questions = questions;
        factors = new FactorReader(base);
        variants.add(base.variant());
    }

    /** The base alone, or the variants that are compared. */
    List<Variant> variants() {
        return List.copyOf(variants);
    }

    Optional<Method> read(Part study) {
        Optional<String> which = study.oneOf("sweep", "compare", "uncertainty", "sensitivity", "search");
        if (which.isEmpty()) {
            return Optional.empty();
        }
        return switch (which.get()) {
            case "sweep" -> sweep(study);
            case "compare" -> compare(study);
            case "uncertainty" -> uncertainty(study);
            case "sensitivity" -> sensitivity(study);
            default -> new SearchReader(factors, questions, base).read(study);
        };
    }

    private Optional<Method> sweep(Part study) {
        List<Node> items = study.itemsOrOne("sweep", "one or two values that vary");
        if (items.isEmpty() || items.size() > 2) {
            if (!study.reading().isSpoiltWithin(study.path("sweep"))) {
                study.reading()
                        .problem(
                                study.node("sweep").orElseThrow(),
                                "",
                                "varies " + items.size() + " values",
                                "one or two",
                                items.isEmpty()
                                        ? "write - vary: vehicles[0].speeds[0] with 'from', 'to' and 'steps'"
                                        : "make several studies, or ask for 'sensitivity' or 'uncertainty'");
            }
            return Optional.empty();
        }
        List<Method.Swept> swept = new ArrayList<>();
        for (Node item : items) {
            factors.swept(Part.of(study.reading(), item, "a value that varies", FactorReader.stepKeys()))
                    .ifPresent(swept::add);
        }
        FactorReader.refuseSameNames(
                study, "sweep", swept.stream().map(Method.Swept::factor).toList());
        return swept.size() < items.size() ? Optional.empty() : Optional.of(new Method.Sweep(swept));
    }

    private Optional<Method> compare(Part study) {
        Part part = study.partOrMissing(
                "compare", "a comparison", "between", "variants", "draws", "of", "ranges", "method", "seed");
        Optional<String> which = part.oneOf("between", "variants");
        if (which.isEmpty()) {
            return Optional.empty();
        }
        Method.By by = Method.By.VARIANTS;
        List<VariantReader.Base> bases = new ArrayList<>();
        bases.add(base);
        if (which.get().equals("between")) {
            Optional<Method.By> side = part.wordIfAny("between", SIDES);
            if (side.isEmpty()) {
                return Optional.empty();
            }
            by = side.get();
        } else {
            bases.clear();
            Set<String> names = new HashSet<>();
            List<Part> parts = part.parts("variants", "a variant", "called", "base", "with");
            for (Part each : parts) {
                variantReader.variant(each, base).ifPresent(bases::add);
                String name = each.textIfAny("called", "a name").orElse("");
                if (!name.isEmpty() && !names.add(name)) {
                    each.node("called")
                            .ifPresent(node -> study.reading()
                                    .problem(
                                            node,
                                            name,
                                            "is the name of another variant too",
                                            "names that tell variants apart",
                                            "give one of them another name"));
                }
            }
            if (bases.size() < parts.size()) {
                return Optional.empty();
            }
            if (parts.size() < 2) {
                part.reading()
                        .problem(
                                part.node("variants").orElseThrow(),
                                "",
                                "has " + parts.size() + (parts.size() == 1 ? " item" : " items"),
                                "two variants at least",
                                "add the base itself as '- called: as it is'");
                return Optional.empty();
            }
        }
        variants.clear();
        bases.forEach(b -> variants.add(b.variant()));
        int draws = part.count("draws", 2, 0);
        List<Uncertain> uncertain = new ArrayList<>();
        for (VariantReader.Base each : bases) {
            uncertain.add(draws > 0 ? UncertainReader.together(part, each.document()) : new Uncertain(List.of()));
        }
        Method.Compare compare = new Method.Compare(
                by,
                draws,
                part.wordIfAny("method", DRAWS).orElse(Draws.Kind.SOBOL),
                part.seed(),
                uncertain,
                ranges(part));
        boolean refused = tooMany(part, compare.dimensions(), 1)
                || draws > 0 && refuseUnreadTolerances(part, bases)
                || refuseNothingInCommon(part, which.get(), by);
        return refused ? Optional.empty() : Optional.of(compare);
    }

    /** Of some changes it cannot be told which tolerances they bring. */
    private static boolean refuseUnreadTolerances(Part part, List<VariantReader.Base> bases) {
        Optional<String> path = bases.stream().flatMap(b -> b.unread().stream()).findFirst();
        path.ifPresent(p -> part.reading()
                .problem(
                        part.node("draws").orElse(new Node.Empty(Spot.WHOLE_FILE, part.path())),
                        "",
                        "draws from tolerances, but those that '" + p + "' brings with it under 'with' are not read",
                        "another vehicle by vehicles[0].file, or single values that the file has, such as 18 N/mm ± 10 %",
                        "write them so, or write a scenario or vehicle file with the change and name it"));
        return path.isPresent();
    }

    private boolean refuseNothingInCommon(Part part, String key, Method.By by) {
        if (part.reading().isSpoiltWithin(part.path()) || CompareFindings.haveTestsInCommon(variants, by)) {
            return false;
        }
        part.reading()
                .problem(
                        part.node(key).orElseThrow(),
                        "",
                        "puts side by side what has no ride test in common",
                        by == Method.By.LOAD_CASES
                                ? "two load cases at least of one vehicle"
                                : "two at least that go over the same road at the same speed, under load cases of the same name or one load case each",
                        by == Method.By.LOAD_CASES
                                ? "add a load case to the vehicle in the base"
                                : "give them the same speeds and load cases in the base");
        return true;
    }

    private Optional<Method> uncertainty(Part study) {
        Part part = study.partOrMissing(
                "uncertainty", "what an uncertainty draws", "draws", "method", "seed", "of", "ranges", "along");
        int draws = part.count("draws", 2, 256);
        Optional<Method.Swept> along = Optional.empty();
        if (part.has("along")) {
            along = part.part("along", "a value that varies", FactorReader.stepKeys())
                    .flatMap(factors::swept);
            if (along.isEmpty()) {
                return Optional.empty();
            }
        }
        Uncertain uncertain = UncertainReader.together(part, base.document());
        List<Factor> ranges = ranges(part);
        boolean refused = tooMany(part, uncertain.dimensions() + ranges.size(), 1)
                || refuseUnreadTolerances(part, List.of(base))
                || along.isPresent() && refuseOtherVehicles(part, along.get().factor());
        return refused
                ? Optional.empty()
                : Optional.of(new Method.Uncertainty(
                        along,
                        draws,
                        part.wordIfAny("method", DRAWS).orElse(Draws.Kind.SOBOL),
                        part.seed(),
                        uncertain,
                        ranges));
    }

    /** Draws are the same at every step, which those of unlike vehicles cannot be. */
    private static boolean refuseOtherVehicles(Part part, Factor along) {
        Optional<String> path = along.paths().stream()
                .filter(p -> p.strip().matches("vehicles(\\[[^\\]]*](\\.file)?)?"))
                .findFirst();
        path.ifPresent(p -> part.reading()
                .problem(
                        part.node("along").orElseThrow(),
                        "",
                        "puts another vehicle in its place at each step (" + p
                                + "), while the draws of all steps are from the same tolerances",
                        "a value of the vehicles that stays uncertain as the base has it",
                        "compare variants, each with its own " + p + ", with the same number of 'draws'"));
        return path.isPresent();
    }

    private List<Factor> ranges(Part part) {
        List<Factor> varying = new ArrayList<>();
        for (Part range : part.parts("ranges", "a value between two ends", FactorReader.rangeKeys())) {
            factors.range(range).ifPresent(varying::add);
        }
        FactorReader.refuseSameNames(part, "ranges", varying);
        return varying;
    }

    private Optional<Method> sensitivity(Part study) {
        Part part = study.partOrMissing(
                "sensitivity", "a sensitivity", "method", "of", "ranges", "trajectories", "levels", "draws", "seed");
        boolean indices = part.word("method", SENSITIVITIES);
        List<Factor> varying = ranges(part);
        List<Correlated> correlated = new ArrayList<>();
        if (part.has("of") || !part.has("ranges")) {
            if (refuseUnreadTolerances(part, List.of(base))) {
                return Optional.empty();
            }
            Uncertain uncertain = UncertainReader.chosen(part, base.document());
            uncertain.factors().forEach(f -> varying.add(labelled(f)));
            uncertain.correlated(Correlated.LEAST).forEach(pair -> correlated.add(labelled(pair)));
        }
        for (String key : indices ? List.of("trajectories", "levels") : List.of("draws")) {
            if (part.has(key)) {
                part.conflict(
                        key,
                        "belongs to the method '" + (indices ? "morris" : "sobol indices") + "'",
                        indices ? "write 'draws'" : "write 'trajectories'");
            }
        }
        if (part.reading().isSpoiltWithin(part.path()) || tooMany(part, varying.size(), indices ? 2 : 1)) {
            return Optional.empty();
        }
        if (varying.isEmpty()) {
            part.reading()
                    .problem(
                            study.node("sensitivity").orElseThrow(),
                            "",
                            "has nothing that varies",
                            "values with tolerances, or 'ranges'",
                            "state tolerances in the vehicle file, or add ranges: [{vary: ..., from: ..., to: ...}]");
            return Optional.empty();
        }
        if (indices) {
            return Optional.of(new Method.Indices(varying, correlated, part.count("draws", 8, 128), part.seed()));
        }
        int levels = part.count("levels", 2, 4);
        if (levels % 2 != 0) {
            part.reading()
                    .problem(
                            part.node("levels").orElseThrow(),
                            Integer.toString(levels),
                            "is odd",
                            "an even number of levels, so that a jump over half of them can start anywhere",
                            "write " + (levels + 1));
            return Optional.empty();
        }
        return Optional.of(
                new Method.Screening(varying, correlated, part.count("trajectories", 2, 20), levels, part.seed()));
    }

    private Correlated labelled(Correlated pair) {
        return new Correlated(
                ValueLabel.of(base.document(), pair.one()),
                ValueLabel.of(base.document(), pair.other()),
                pair.correlation());
    }

    private Factor labelled(Factor factor) {
        return factor instanceof Factor.Tolerated tolerated
                ? new Factor.Tolerated(
                        ValueLabel.of(base.document(), tolerated.name()), tolerated.paths(), tolerated.spread())
                : factor;
    }

    private static boolean tooMany(Part part, int values, int times) {
        if (values * times <= Draws.MOST) {
            return false;
        }
        part.reading()
                .problem(
                        part.node("of").orElse(new Node.Empty(Spot.WHOLE_FILE, part.path())),
                        "",
                        "varies " + values + " values",
                        "at most " + Draws.MOST / times,
                        "name those that matter under 'of'; a screening by the method 'morris' finds them");
        return true;
    }

    /** Notes a study that is larger than can be counted. */
    static void refuseHuge(Reading reading, Node top, long runs) {
        if (runs > MOST_RUNS) {
            reading.problem(top, "", "asks for " + runs + " runs", "at most " + MOST_RUNS, "take fewer steps or draws");
        }
    }
}

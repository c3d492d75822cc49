package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Correlated;
import org.ridewright.study.Estimate;
import org.ridewright.study.Factor;
import org.ridewright.study.Findings;
import org.ridewright.study.IndexFindings;
import org.ridewright.study.QuantileSketch;
import org.ridewright.study.Question;
import org.ridewright.study.ScreeningFindings;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;
import org.ridewright.study.SweepFindings;
import org.ridewright.study.UncertaintyFindings;

/** What a study found, for other programs; single runs are in its table. A value that does not exist is null. */
public final class StudyJson {
    /** Shares of draws at which quantiles are given. */
    static final double[] SHARES = {0.05, 0.25, 0.5, 0.75, 0.95};

    private StudyJson() {}

    /** Of all methods but a search. */
    public static String render(StudyBasis basis, Findings findings) {
        ObjectNode root = root(basis, findings.study(), findings.runs(), findings.failed());
        List<String> sentences = StudyAnswer.of(findings);
        if (!sentences.isEmpty()) {
            ArrayNode answer = root.putArray("answer");
            sentences.forEach(answer::add);
        }
        ArrayNode tests = root.putArray("ride tests as written");
        for (int t = 0; t < findings.base().size(); t++) {
            ObjectNode test =
                    tests.addObject().put("ride test", findings.tests().get(t));
            List<String> labels = findings.base().get(t).labels();
            test.put("vehicle", labels.get(0)).put("load case", labels.get(1));
            test.put("road", labels.get(2)).put("speed", labels.get(3));
            ArrayNode values = test.putArray("values");
            for (int q = 0; q < findings.study().questions().size(); q++) {
                Question question = findings.study().questions().get(q);
                JsonNumbers.value(
                        values,
                        question.name(),
                        findings.asWritten(t, q),
                        question.measure().unit());
            }
        }
        if (findings instanceof SweepFindings sweep) {
            sweep(root, sweep);
        } else if (findings instanceof CompareFindings compare) {
            compare(root, compare);
        } else if (findings instanceof UncertaintyFindings uncertainty) {
            uncertainty(root, uncertainty);
        } else if (findings instanceof ScreeningFindings screening) {
            screening(root, screening);
        } else if (findings instanceof IndexFindings indices) {
            indices(root, indices);
        }
        return text(root);
    }

    /** Of a search. */
    public static String render(StudyBasis basis, Study study, SearchRun.Result result) {
        long failed = result.way().stream().filter(s -> s.outcome().hasFailed()).count();
        ObjectNode root = root(basis, study, result.way().size(), failed);
        new SearchJson(study, result).write(root);
        return text(root);
    }

    private static ObjectNode root(StudyBasis basis, Study study, long runs, long failed) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("study", study.name());
        root.put("method", study.method().word());
        root.put("program", basis.program());
        root.put("study file", basis.file());
        ArrayNode bases = root.putArray("base files");
        StudyBasis.bases(study).forEach(bases::add);
        StudyDraws.of(study).seed().ifPresent(seed -> root.put("seed", seed));
        root.put("runs", runs);
        root.put("runs that failed", failed);
        return root;
    }

    private static String text(ObjectNode root) {
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    private static void sweep(ObjectNode root, SweepFindings sweep) {
        ArrayNode axes = root.putArray("swept");
        for (int s = 0; s < sweep.swept().size(); s++) {
            Factor factor = sweep.swept().get(s).factor();
            ObjectNode axis = axes.addObject().put("value", factor.name()).put("unit", factor.unit());
            ArrayNode levels = axis.putArray("levels");
            if (factor instanceof Factor.Listed listed && listed.unit().isEmpty()) {
                listed.words().forEach(levels::add);
            } else {
                for (double level : sweep.axis(s)) {
                    levels.add(level);
                }
            }
        }
        ArrayNode answers = root.putArray("answers");
        for (int t = 0; t < sweep.tests().size(); t++) {
            for (int q = 0; q < sweep.study().questions().size(); q++) {
                ArrayNode rows = answer(answers, sweep, t, q).putArray("values by level");
                for (double[] row : sweep.values(t, q)) {
                    ArrayNode cells = row.length > 1 ? rows.addArray() : rows;
                    for (double value : row) {
                        add(cells, value);
                    }
                }
            }
        }
    }

    private static void add(ArrayNode cells, double value) {
        if (Double.isFinite(value)) {
            cells.add(value);
        } else {
            cells.addNull();
        }
    }

    private static ObjectNode answer(ArrayNode answers, Findings findings, int test, int question) {
        Question asked = findings.study().questions().get(question);
        return answers.addObject()
                .put("ride test", findings.tests().get(test))
                .put("name", asked.name())
                .put("unit", asked.measure().unit());
    }

    private static void compare(ObjectNode root, CompareFindings compare) {
        ArrayNode answers = root.putArray("answers");
        for (int r = 0; r < compare.rows().size(); r++) {
            for (int q = 0; q < compare.study().questions().size(); q++) {
                Question asked = compare.study().questions().get(q);
                ObjectNode node = answers.addObject()
                        .put("ride test", compare.rows().get(r))
                        .put("name", asked.name())
                        .put("unit", asked.measure().unit());
                int best = compare.best(r, q);
                if (best >= 0) {
                    node.put("best", compare.things().get(best));
                } else {
                    node.putNull("best");
                }
                int written = compare.bestAsWritten(r, q);
                if (compare.method().draws() > 0 && written >= 0) {
                    node.put("best as written", compare.things().get(written));
                }
                ArrayNode things = node.putArray("values");
                for (int th = 0; th < compare.things().size(); th++) {
                    ObjectNode thing = JsonNumbers.value(
                            things,
                            compare.things().get(th),
                            compare.value(th, r, q),
                            asked.measure().unit());
                    if (compare.spread(th, r, q).count() > 0) {
                        quantiles(thing.putObject("draws"), compare.spread(th, r, q));
                    }
                    if (compare.difference(th, r, q).count() > 0) {
                        quantiles(thing.putObject("difference from the best"), compare.difference(th, r, q));
                    }
                }
            }
        }
    }

    private static void quantiles(ObjectNode node, QuantileSketch sketch) {
        node.put("count", sketch.count());
        JsonNumbers.put(node, "mean", sketch.mean());
        for (double share : SHARES) {
            JsonNumbers.put(node, Math.round(100 * share) + " %", sketch.quantile(share));
        }
    }

    private static void uncertainty(ObjectNode root, UncertaintyFindings findings) {
        findings.method()
                .along()
                .ifPresent(along -> root.put("along", along.factor().name())
                        .put("unit", along.factor().unit()));
        ArrayNode answers = root.putArray("answers");
        double[] axis = findings.axis();
        for (int t = 0; t < findings.tests().size(); t++) {
            for (int q = 0; q < findings.study().questions().size(); q++) {
                ArrayNode levels = answer(answers, findings, t, q).putArray("draws");
                for (int slot = 0; slot < axis.length; slot++) {
                    ObjectNode level = levels.addObject();
                    if (findings.method().along().isPresent()) {
                        JsonNumbers.put(level, "at", axis[slot]);
                    }
                    quantiles(level, findings.spread(slot, t, q));
                }
            }
        }
    }

    private static void screening(ObjectNode root, ScreeningFindings findings) {
        root.put("trajectories", findings.trajectories());
        correlated(root, findings.correlated());
        ArrayNode answers = root.putArray("answers");
        for (int t = 0; t < findings.tests().size(); t++) {
            for (int q = 0; q < findings.study().questions().size(); q++) {
                ObjectNode answer = answer(answers, findings, t, q);
                answer.put("jumps used", findings.effects(t, q).used());
                answer.put("jumps left out", findings.effects(t, q).left());
                answer.put("told", findings.effects(t, q).isTold());
                ArrayNode effects = answer.putArray("effects over the whole range");
                for (int f = 0; f < findings.factors().size(); f++) {
                    ObjectNode node = effects.addObject()
                            .put("value", findings.factors().get(f).name());
                    estimate(node, "mean size", findings.effects(t, q).size(f));
                    estimate(node, "mean", findings.effects(t, q).mean(f));
                    estimate(node, "standard deviation", findings.effects(t, q).deviation(f));
                }
            }
        }
    }

    private static void indices(ObjectNode root, IndexFindings findings) {
        root.put("points", findings.draws());
        correlated(root, findings.correlated());
        ArrayNode answers = root.putArray("answers");
        for (int t = 0; t < findings.tests().size(); t++) {
            for (int q = 0; q < findings.study().questions().size(); q++) {
                ObjectNode node = answer(answers, findings, t, q);
                estimate(node, "standard deviation", findings.indices(t, q).deviation());
                node.put("points used", findings.indices(t, q).used());
                node.put("points left out", findings.indices(t, q).left());
                node.put("told", findings.indices(t, q).isTold());
                ArrayNode indices = node.putArray("Sobol' indices");
                for (int f = 0; f < findings.factors().size(); f++) {
                    ObjectNode each = indices.addObject()
                            .put("value", findings.factors().get(f).name());
                    estimate(each, "first order", findings.indices(t, q).first(f));
                    estimate(each, "total", findings.indices(t, q).total(f));
                }
            }
        }
    }

    private static void correlated(ObjectNode root, List<Correlated> pairs) {
        ArrayNode nodes = root.putArray("correlations that are ignored");
        for (Correlated pair : pairs) {
            ArrayNode values =
                    nodes.addObject().put("correlation", pair.correlation()).putArray("values");
            values.add(pair.one()).add(pair.other());
        }
    }

    private static void estimate(ObjectNode node, String name, Estimate estimate) {
        ObjectNode each = node.putObject(name);
        JsonNumbers.put(each, "value", estimate.value());
        JsonNumbers.put(each, "5 %", estimate.low());
        JsonNumbers.put(each, "95 %", estimate.high());
    }
}

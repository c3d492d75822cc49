package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.ridewright.study.Question;
import org.ridewright.why.Contribution;
import org.ridewright.why.Swap;
import org.ridewright.why.WhyFindings;
import org.ridewright.why.WhyRun;

/** The numbers of {@code why} as JSON; contributions are parts of the number as it is now. */
public final class WhyJson {
    private WhyJson() {}

    /** Of findings, whole. */
    public static String render(WhyFindings findings, WhyBasis basis) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("vehicle", basis.vehicle()).put("file", basis.file()).put("program", basis.program());
        root.put("ride", basis.ride()).put("load case", basis.load());
        root.put("draws", findings.draws())
                .put("draws replaced", findings.replaced())
                .put("draws left out", findings.lost())
                .put("seed", WhyRun.SEED);
        root.put("uncertain values", findings.uncertainValues());
        ArrayNode swaps = root.putArray("swaps");
        for (Swap swap : findings.swaps()) {
            ArrayNode changes = swaps.addObject()
                    .put("name", swap.name())
                    .put("alternative", swap.alternative())
                    .putArray("changes");
            swap.changes()
                    .forEach(c -> changes.addObject().put("path", c.path()).put("text", c.text()));
        }
        ArrayNode skipped = root.putArray("left as they are");
        basis.skipped().forEach(s -> skipped.addObject().put("name", s.name()).put("reason", s.reason()));
        ArrayNode answers = root.putArray("answers");
        for (int t = 0; t < findings.tests().size(); t++) {
            for (int q = 0; q < findings.questions().size(); q++) {
                answer(answers.addObject(), findings, t, q);
            }
        }
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    private static void answer(ObjectNode node, WhyFindings findings, int t, int q) {
        Question question = findings.questions().get(q);
        node.put("ride test", findings.tests().get(t));
        node.put("name", question.name()).put("unit", question.measure().unit());
        part(node.putObject("now"), findings.nowDrawn(t, q));
        ArrayNode alone = node.putArray("alone");
        ArrayNode shares = node.putArray("share of all together");
        for (int i = 0; i < findings.swaps().size(); i++) {
            String name = findings.swaps().get(i).name();
            part(alone.addObject().put("swap", name), findings.alone(t, q, i));
            part(shares.addObject().put("swap", name), findings.share(t, q, i));
        }
        ArrayNode pairs = node.putArray("interactions");
        for (WhyWords.Pair pair : WhyWords.pairs(findings, t, q)) {
            ObjectNode each = pairs.addObject();
            each.putArray("swaps")
                    .add(findings.swaps().get(pair.i()).name())
                    .add(findings.swaps().get(pair.j()).name());
            part(each, findings.interaction(t, q, pair.i(), pair.j()));
        }
        part(node.putObject("all together"), findings.together(t, q));
    }

    private static void part(ObjectNode node, Contribution part) {
        JsonNumbers.put(node, "as written", part.asWritten());
        JsonNumbers.put(node, "5 %", part.interval().low());
        JsonNumbers.put(node, "median", part.interval().median());
        JsonNumbers.put(node, "95 %", part.interval().high());
    }
}

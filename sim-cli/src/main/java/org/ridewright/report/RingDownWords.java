package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.Decay;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.RingDowns;
import org.ridewright.friction.RingDowns.Rung;

/** What the ring-downs show, in sentences and a table. */
final class RingDownWords {
    private static final double MILLI = 1000;
    /** Fewer swings than this lie on any line. */
    private static final int FEWEST_SWINGS = 4;

    private static final String MARK = "*";

    private RingDownWords() {}

    /** What they show; no paragraphs of a vehicle of which no place is let go. */
    static Section of(FrictionLab lab) {
        List<String> paragraphs = new ArrayList<>();
        if (!lab.ringDowns().isEmpty()) {
            paragraphs.add(
                    "Let go from %s mm, brake on: the table counts cycles until the body is at rest or friction holds every spring."
                            .formatted(depth(lab)));
            paragraphs.add(shapes(lab));
        }
        return new Section("Let go", paragraphs);
    }

    private static String depth(FrictionLab lab) {
        return Numbers.brief(MILLI * lab.settings().depth());
    }

    /** Heads of {@link #rows}. */
    static List<String> heads() {
        List<String> heads = new ArrayList<>(List.of("Pressed"));
        FrictionLab.GREASINGS.forEach(g -> heads.add("Cycles, " + g.word()));
        heads.add("with the damper of equal loss");
        return heads;
    }

    /** One row for each place. */
    static List<List<String>> rows(FrictionLab lab) {
        List<List<String>> rows = new ArrayList<>();
        for (RingDowns each : lab.ringDowns()) {
            List<String> row = new ArrayList<>(List.of(place(lab, each)));
            each.rungs().forEach(r -> row.add(cycles(r.result().count())));
            row.add(each.damper().map(d -> cycles(d.result().count())).orElse("–"));
            rows.add(row);
        }
        return rows;
    }

    /** How the rows are to be read. */
    static String notes(FrictionLab lab) {
        StringBuilder words =
                new StringBuilder("The damper takes as much of the first cycle as the friction as written.");
        if (lab.ringDowns().stream().anyMatch(each -> each.damper().isEmpty())) {
            words.append(" Where the body swings less than a cycle as written there is no such damper.");
        }
        if (rows(lab).stream().flatMap(List::stream).anyMatch(cell -> cell.endsWith(MARK))) {
            words.append(" ")
                    .append(MARK)
                    .append(" Not counted: the body then goes on swinging by up to ")
                    .append(widest(lab))
                    .append(" on springs that friction holds, which this model hardly damps.");
        }
        return words.toString();
    }

    /** What is pressed; a vehicle that does not pitch has no front. */
    static String place(FrictionLab lab, RingDowns each) {
        if (each.kind().word().equals("roll")) {
            return "side";
        }
        return lab.model().vehicle().layout().pitches() ? each.kind().word() : "body";
    }

    private static String cycles(Count count) {
        double cycles = count.slidingCycles();
        String text = cycles == 0 ? "0" : cycles == 0.5 ? "0.5" : Numbers.brief(cycles);
        return text + (swingsOn(count) ? MARK : "");
    }

    /** Whether the body visibly swings on once friction holds every spring. */
    static boolean swingsOn(Count count) {
        return count.left().held() && count.left().visible();
    }

    /** Half-widths of the greatest swings on held springs, up and down and turning. */
    private static String widest(FrictionLab lab) {
        double straight = 0;
        double turning = 0;
        for (RingDowns each : lab.ringDowns()) {
            for (Rung rung : RingDownFigures.rungs(each)) {
                Count count = rung.result().count();
                double half = swingsOn(count) ? count.left().halfWidth() : 0;
                straight = count.motion().turns() ? straight : Math.max(straight, half);
                turning = count.motion().turns() ? Math.max(turning, half) : turning;
            }
        }
        List<String> widths = new ArrayList<>();
        if (straight > 0) {
            widths.add("± " + Numbers.brief(MILLI * straight) + " mm");
        }
        if (turning > 0) {
            widths.add("± " + Numbers.brief(MILLI * turning) + " mrad");
        }
        return String.join(" and ", widths);
    }

    /** Whether it swings so often that one line can be told from another. */
    static boolean hasShape(Count count) {
        return count.halfCycles() >= FEWEST_SWINGS && !count.isOnHeldSprings();
    }

    /** Which swings lie on which line. */
    private static String shapes(FrictionLab lab) {
        List<String> all = new ArrayList<>();
        for (Decay.Shape shape : Decay.Shape.values()) {
            List<String> such = new ArrayList<>();
            for (RingDowns each : lab.ringDowns()) {
                for (Rung rung : RingDownFigures.rungs(each)) {
                    Count count = rung.result().count();
                    if (hasShape(count) && count.decay().orElseThrow().shape() == shape) {
                        such.add(place(lab, each) + " " + rung.word());
                    }
                }
            }
            if (!such.isEmpty()) {
                all.add(line(shape) + ": " + String.join(", ", such));
            }
        }
        return all.isEmpty()
                ? "No motion has the four swings from which a straight line can be told from an exponential; press deeper to see them."
                : "Swings shrink " + String.join("; ", all) + ".";
    }

    private static String line(Decay.Shape shape) {
        return switch (shape) {
            case STRAIGHT -> "along a straight line";
            case EXPONENTIAL -> "along an exponential";
            case MIXED -> "along neither clearly";
        };
    }
}

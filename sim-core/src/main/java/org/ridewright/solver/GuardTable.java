package org.ridewright.solver;

import java.util.ArrayList;
import java.util.List;

/** Numbers every guard that a law may have, those of one element next to each other; immutable. */
final class GuardTable {
    /** What a guard watches. */
    enum Kind {
        STAGE("helper, stop or table segment"),
        SPEED("damper segment"),
        LOAD("friction band"),
        SLIDER("friction"),
        SENSE("friction envelope"),
        CONTACT_FORCE("contact"),
        CONTACT_GAP("contact");

        final String word;

        Kind(String word) {
            this.word = word;
        }
    }

    private record Entry(Kind kind, int element, int part, int side) {}

    private final FlatLaws laws;
    final int count;
    /** Guards of element e are those from {@code from[e]} to before {@code from[e + 1]}. */
    final int[] from;

    final Kind[] kind;
    final int[] element;
    /** Number of the gapped piece or slider. */
    final int[] part;
    /** +1 for the upper limit of a locked slider, −1 for the lower. */
    final int[] side;

    GuardTable(FlatLaws laws) {
        this.laws = laws;
        List<Entry> entries = new ArrayList<>();
        from = new int[laws.ne + 1];
        for (int e = 0; e < laws.ne; e++) {
            addGuardsOf(e, entries);
            from[e + 1] = entries.size();
        }
        count = entries.size();
        kind = entries.stream().map(Entry::kind).toArray(Kind[]::new);
        element = entries.stream().mapToInt(Entry::element).toArray();
        part = entries.stream().mapToInt(Entry::part).toArray();
        side = entries.stream().mapToInt(Entry::side).toArray();
    }

    private void addGuardsOf(int e, List<Entry> entries) {
        for (int p = laws.stageFrom[e]; p < laws.stageFrom[e + 1]; p++) {
            entries.add(new Entry(Kind.STAGE, e, p, 0));
        }
        for (int p = laws.speedFrom[e]; p < laws.speedFrom[e + 1]; p++) {
            entries.add(new Entry(Kind.SPEED, e, p, 0));
        }
        if (laws.mu[e] != 0) {
            entries.add(new Entry(Kind.LOAD, e, 0, 0));
        }
        if (laws.envelope[e] > 0) {
            entries.add(new Entry(Kind.SENSE, e, 0, 0));
        } else {
            for (int j = laws.sliderFrom[e]; j < laws.sliderFrom[e + 1]; j++) {
                entries.add(new Entry(Kind.SLIDER, e, j, 1));
                entries.add(new Entry(Kind.SLIDER, e, j, -1));
            }
        }
        if (laws.pushes[e]) {
            entries.add(new Entry(Kind.CONTACT_FORCE, e, 0, 0));
            entries.add(new Entry(Kind.CONTACT_GAP, e, 0, 0));
        }
    }

    /** Name of a guard for messages. */
    String describe(int guard) {
        return kind[guard].word + " of '" + laws.name(element[guard]) + "'";
    }
}

package org.ridewright.io;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ridewright.fieldwork.BounceCount;
import org.ridewright.fieldwork.BounceKind;
import org.ridewright.fieldwork.BounceLog;
import org.ridewright.fieldwork.Release;
import org.ridewright.fieldwork.UsualTolerance;
import org.ridewright.quantity.QuantityKind;

/** Reads {@code bounce} and {@code bounce log}. */
record BounceReader(LoadingReader loadings, LogReferenceReader logs) {
    static final List<String> COUNT = Stream.concat(
                    LoadingReader.KEYS.stream(), Stream.of("test", "release", "by", "cycles", "in", "cycles to rest"))
            .toList();
    static final List<String> LOG = Stream.concat(LoadingReader.KEYS.stream(), Stream.of("test", "release", "logs"))
            .toList();

    private static final Words<BounceKind> KINDS = kinds();
    private static final Words<Release> RELEASES =
            Words.of("a way to let go", List.of(Release.values()), Release::word);

    BounceCount count(Part part) {
        return new BounceCount(
                FactReader.heading(part),
                loadings.read(part),
                part.word("test", KINDS),
                part.wordIfAny("release", RELEASES).orElse(Release.PUSHED_DOWN),
                part.measureIfAny("by", QuantityKind.LENGTH).map(UsualTolerance::ofTape),
                UsualTolerance.ofCycles(part.measure("cycles", QuantityKind.RATIO)),
                UsualTolerance.ofStopwatch(part.measure("in", QuantityKind.TIME)),
                part.measureIfAny("cycles to rest", QuantityKind.RATIO).map(UsualTolerance::ofCyclesToRest));
    }

    BounceLog log(Part part) {
        return new BounceLog(
                FactReader.heading(part),
                loadings.read(part),
                part.word("test", KINDS),
                part.wordIfAny("release", RELEASES).orElse(Release.PUSHED_DOWN),
                logs.read(part));
    }

    /** A test at one side is one of roll. */
    private static Words<BounceKind> kinds() {
        Words<BounceKind> words = Words.of("a bounce test", List.of(BounceKind.values()), BounceKind::word);
        Map<String, BounceKind> meanings = new LinkedHashMap<>(words.meanings());
        meanings.put("roll", BounceKind.SIDE);
        return new Words<>(words.called(), meanings);
    }
}

package org.ridewright.io;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Coherence;
import org.ridewright.road.NamedSpectrum;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.road.Surface;
import org.ridewright.road.Surface.Stretch;

/**
 * Reads {@code surfaces}: a list of groups with one key each, the kind of surface.
 *
 * @param profiles reads the files of measured ones
 */
record SurfaceReader(ProfileReader profiles) {
    private static final List<String> STRETCH_KEYS = List.of("from", "to");
    private static final String[] KINDS = {
        "spectrum", "setts", "washboard", "ruts", "twist", "joints", "stones", "measured"
    };
    private static final Map<String, List<String>> OWN_KEYS = Map.of(
            "spectrum", List.of("class", "ground", "roughness", "waviness", "bend", "band", "coherence", "seed"),
            "setts", List.of("length", "width", "crown", "joint", "joint depth", "unevenness", "irregularity", "seed"),
            "washboard", List.of("pitch", "height", "drift", "seed"),
            "ruts", List.of("depth", "width", "apart", "variation", "length", "seed"),
            "twist", List.of("height", "length", "across", "lag"),
            "joints", List.of("every", "gap", "depth", "lip", "sag", "skew"),
            "stones", List.of("per metre", "strip", "size", "spread", "proud", "seed"),
            "measured", ProfileReader.KEYS);
    private static final Words<RoughnessClass> CLASSES = Words.of(
            "a class", Arrays.asList(RoughnessClass.values()), c -> c.name().toLowerCase(Locale.ROOT));
    private static final Words<NamedSpectrum> GROUNDS =
            Words.of("a ground", Arrays.asList(NamedSpectrum.values()), NamedSpectrum::word);
    private static final Words<Coherence> COHERENCES = Words.of(
            "a coherence",
            List.of(new Coherence.Isotropic(), new Coherence.Full(), new Coherence.None()),
            c -> c instanceof Coherence.Isotropic ? "isotropic" : c instanceof Coherence.Full ? "full" : "none");
    private static final Measure USUAL_WAVINESS =
            Measure.estimated(2, QuantityKind.RATIO, "waviness 2, as in ISO 8608");
    private static final Measure HALF_TURN =
            Measure.estimated(Math.PI, QuantityKind.ANGLE, "lag 180 deg: one side up where the other is down");
    private static final Measure RUT_LENGTH =
            Measure.estimated(5, QuantityKind.LENGTH, "ruts change their depth over 5 m");
    private static final Measure HALF_PROUD =
            Measure.estimated(0.5, QuantityKind.RATIO, "stones stand proud by half their width");
    private static final Measure ALIKE = Measure.estimated(1, QuantityKind.RATIO, "spread 1: all of one size");

    List<Surface> read(Part road) {
        List<Surface> surfaces = new ArrayList<>();
        for (Part item : road.parts("surfaces", "a surface", KINDS)) {
            Optional<String> kind = OnlyKey.of(item, KINDS);
            if (kind.isEmpty()) {
                item.reading().spoil(item.path());
                item.reading().spoil(item.path(KINDS[0]));
                item.reading().spoil(item.path("washboard"));
            }
            surfaces.add(surface(item, kind.orElse("washboard")));
        }
        return surfaces;
    }

    private Surface surface(Part item, String kind) {
        String[] keys = Stream.concat(STRETCH_KEYS.stream(), OWN_KEYS.get(kind).stream())
                .toArray(String[]::new);
        Part part = item.partOrMissing(kind, Hints.article(kind) + " " + kind, keys);
        Stretch stretch = new Stretch(
                part.measureIfAny("from", QuantityKind.LENGTH), part.measureIfAny("to", QuantityKind.LENGTH));
        return switch (kind) {
            case "spectrum" -> new Surface.Spectral(stretch, spectrum(part), coherence(part), part.seed());
            case "setts" -> setts(part, stretch);
            case "ruts" ->
                new Surface.Ruts(
                        stretch,
                        length(part, "depth"),
                        length(part, "width"),
                        length(part, "apart"),
                        part.measureOrZero("variation", QuantityKind.RATIO),
                        part.measureOr("length", RUT_LENGTH),
                        part.seed());
            case "twist" ->
                new Surface.Twist(
                        stretch,
                        length(part, "height"),
                        length(part, "length"),
                        length(part, "across"),
                        part.measureOr("lag", HALF_TURN));
            case "joints" ->
                new Surface.Joints(
                        stretch,
                        length(part, "every"),
                        lengthOrZero(part, "gap"),
                        lengthOrZero(part, "depth"),
                        lengthOrZero(part, "lip"),
                        lengthOrZero(part, "sag"),
                        part.measureOrZero("skew", QuantityKind.ANGLE));
            case "stones" ->
                new Surface.Stones(
                        stretch,
                        part.measure("per metre", QuantityKind.RATIO),
                        length(part, "strip"),
                        length(part, "size"),
                        part.measureOr("spread", ALIKE),
                        part.measureOr("proud", HALF_PROUD),
                        part.seed());
            case "measured" -> profiles.measured(part, stretch);
            default ->
                new Surface.Washboard(
                        stretch,
                        length(part, "pitch"),
                        length(part, "height"),
                        part.measureOrZero("drift", QuantityKind.RATIO),
                        part.seed());
        };
    }

    private static Surface setts(Part part, Stretch stretch) {
        Measure length = length(part, "length");
        return new Surface.Setts(
                stretch,
                length,
                part.measureOr("width", length),
                lengthOrZero(part, "crown"),
                lengthOrZero(part, "joint"),
                lengthOrZero(part, "joint depth"),
                lengthOrZero(part, "unevenness"),
                part.measureOrZero("irregularity", QuantityKind.RATIO),
                part.seed());
    }

    private static RoughnessSpectrum spectrum(Part part) {
        List<List<Measure>> band = part.has("band") ? band(part) : List.of();
        Measure lowest = band.isEmpty() ? RoughnessSpectrum.LOWEST : band.get(0).get(0);
        Measure highest =
                band.isEmpty() ? RoughnessSpectrum.HIGHEST : band.get(0).get(1);
        Optional<String> given = part.oneOf("class", "ground", "roughness");
        if (given.isPresent() && given.get().equals("ground")) {
            NamedSpectrum named = part.word("ground", GROUNDS);
            Stream.of("waviness", "bend").filter(part::has).forEach(key -> part.conflict(key, "ground"));
            return named.over(lowest, highest);
        }
        Measure roughness = given.isPresent() && given.get().equals("class")
                ? ofClass(part)
                : given.isPresent()
                        ? part.measure("roughness", QuantityKind.VOLUME)
                        : Values.standIn(QuantityKind.VOLUME);
        List<Measure> waviness = part.measures("waviness", QuantityKind.RATIO);
        Optional<RoughnessSpectrum.Bend> bend = Optional.empty();
        if (waviness.size() > 1) {
            bend = Optional.of(new RoughnessSpectrum.Bend(
                    part.measure("bend", QuantityKind.WAVENUMBER),
                    waviness.get(1).value()));
        } else if (part.has("bend")) {
            part.conflict("bend", "is given with one waviness only", "write waviness: [before the bend, beyond it]");
        }
        if (waviness.size() > 2) {
            part.conflict(
                    "waviness", "has " + waviness.size() + " values", "write one, or [before the bend, beyond it]");
        }
        return new RoughnessSpectrum(
                roughness,
                (waviness.isEmpty() ? USUAL_WAVINESS : waviness.get(0)).value(),
                bend,
                lowest,
                highest,
                given.filter("class"::equals).isPresent() ? "ISO 8608:2016, annex C" : "");
    }

    private static Measure ofClass(Part part) {
        RoughnessClass c = part.word("class", CLASSES);
        return Measure.estimated(
                c.geometricMean(), QuantityKind.VOLUME, "class " + c.name() + " of ISO 8608, geometric mean");
    }

    /** A row of two wavenumbers, read like the rows of a table of one row. */
    private static List<List<Measure>> band(Part part) {
        List<Measure> ends = part.measures("band", QuantityKind.WAVENUMBER);
        if (ends.size() == 2) {
            return List.of(ends);
        }
        if (!part.reading().isSpoiltWithin(part.path("band"))) {
            part.conflict(
                    "band",
                    "has " + ends.size() + (ends.size() == 1 ? " end" : " ends"),
                    "write band: [0.011 cycle/m, 10 cycle/m], the lowest wavenumber and the highest");
        }
        return List.of();
    }

    private static Coherence coherence(Part part) {
        Optional<Node> node = part.node("coherence");
        if (node.isPresent() && node.get() instanceof Node.Mapping) {
            Part group = part.partOrMissing("coherence", "a coherence", "decay", "length");
            Optional<String> given = group.oneOf("decay", "length");
            return given.filter("decay"::equals).isPresent()
                    ? new Coherence.Decay(group.measure("decay", QuantityKind.RATIO))
                    : new Coherence.Distance(
                            given.isPresent()
                                    ? group.measure("length", QuantityKind.LENGTH)
                                    : Values.standIn(QuantityKind.LENGTH));
        }
        return part.wordIfAny("coherence", COHERENCES).orElse(new Coherence.Isotropic());
    }

    private static Measure length(Part part, String key) {
        return part.measure(key, QuantityKind.LENGTH);
    }

    private static Measure lengthOrZero(Part part, String key) {
        return part.measureOrZero(key, QuantityKind.LENGTH);
    }
}

package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.fieldwork.Camber;
import org.ridewright.fieldwork.LoadDeflection;
import org.ridewright.fieldwork.LoadDeflection.Loaded;
import org.ridewright.fieldwork.LoadDeflection.Row;
import org.ridewright.fieldwork.Loading;
import org.ridewright.fieldwork.Side;
import org.ridewright.fieldwork.UsualTolerance;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;

/** Reads what was measured on springs: {@code load deflection}, {@code camber}. */
record SpringFactReader(LoadingReader loadings) {
    static final List<String> LOAD_DEFLECTION = List.of("axle", "spring", "side", "rows");
    static final List<String> CAMBER = Stream.concat(
                    LoadingReader.KEYS.stream(), Stream.of("axle", "spring", "free", "loaded", "load"))
            .toList();

    static LoadDeflection loadDeflection(Part part) {
        return new LoadDeflection(FactReader.heading(part), loaded(part), rows(part));
    }

    private static Loaded loaded(Part part) {
        Optional<String> which = part.atMostOneOf("spring", "side");
        String axle = FactReader.axle(part, "axle");
        if (which.equals(Optional.of("spring"))) {
            return new Loaded.OneSpring(axle, part.text("spring", "the name of a spring of that axle"));
        }
        Optional<Side> side = part.wordIfAny("side", FactReader.SIDES);
        return side.isPresent() ? new Loaded.OneCorner(axle, side.get()) : new Loaded.WholeAxle(axle);
    }

    private static List<Row> rows(Part part) {
        if (!part.has("rows")) {
            part.missing("rows", "rows [load, deflection] in the order in which they were read");
        }
        boolean lengthFirst =
                part.node("rows").filter(SpringFactReader::lengthFirst).isPresent();
        QuantityKind first = lengthFirst ? QuantityKind.LENGTH : QuantityKind.FORCE;
        QuantityKind second = lengthFirst ? QuantityKind.FORCE : QuantityKind.LENGTH;
        int load = lengthFirst ? 1 : 0;
        return part.rows("rows", first, second).stream()
                .map(row ->
                        new Row(UsualTolerance.ofLoad(row.get(load)), UsualTolerance.ofDeflection(row.get(1 - load))))
                .toList();
    }

    /** Whether the first value of the first row that tells is a length; a bare zero does not tell. */
    private static boolean lengthFirst(Node rows) {
        if (rows instanceof Node.Sequence sequence) {
            for (Node row : sequence.items()) {
                if (row instanceof Node.Sequence cells && cells.items().size() == 2) {
                    boolean first = isLength(cells.items().get(0));
                    if (first != isLength(cells.items().get(1))) {
                        return first;
                    }
                }
            }
        }
        return false;
    }

    private static boolean isLength(Node node) {
        if (!(node instanceof Node.Scalar scalar)) {
            return false;
        }
        try {
            Measures.parse(scalar.text(), QuantityKind.LENGTH);
            return true;
        } catch (QuantityFormatException other) {
            return false;
        }
    }

    Camber camber(Part part) {
        return new Camber(
                FactReader.heading(part),
                FactReader.axle(part, "axle"),
                part.text("spring", "the name of a spring of that axle"),
                UsualTolerance.ofTape(part.measure("free", QuantityKind.LENGTH)),
                UsualTolerance.ofTape(part.measure("loaded", QuantityKind.LENGTH)),
                under(part));
    }

    private Camber.Under under(Part part) {
        Optional<String> given = part.oneOf("load", "with");
        if (given.equals(Optional.of("with"))) {
            Loading loading = loadings.read(part);
            return new Camber.Under.Standing(loading);
        }
        if (part.has("added")) {
            part.conflict("added", "stands without 'with'", "write 'with', the load case that was aboard");
        }
        Measure load = part.measureIfAny("load", QuantityKind.FORCE).orElse(Values.standIn(QuantityKind.FORCE));
        return new Camber.Under.Known(UsualTolerance.ofLoad(load));
    }
}

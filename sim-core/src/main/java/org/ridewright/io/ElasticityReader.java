package org.ridewright.io;

import java.util.List;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Elasticity.Leaves;
import org.ridewright.vehicle.Elasticity.TablePoint;

/** Reads the elastic law of a spring from the one of its keys that gives it. */
final class ElasticityReader {
    private static final Measure YOUNGS_MODULUS =
            new Measure(QuantityKind.PRESSURE, 206e9, 0, Provenance.HANDBOOK, "206 GPa, spring steel");
    private static final Measure SHEAR_MODULUS =
            new Measure(QuantityKind.PRESSURE, 79e9, 0, Provenance.HANDBOOK, "79 GPa, spring steel");

    private ElasticityReader() {}

    static Elasticity read(Part spring) {
        return switch (spring.oneOf("rate", "table", "leaves", "wire", "bar", "gas")
                .orElse("")) {
            case "table" -> table(spring);
            case "leaves" ->
                leaves(spring.partOrMissing(
                        "leaves",
                        "a pack of leaves",
                        "pack",
                        "length",
                        "extra full length leaves",
                        "clamp",
                        "long arm",
                        "modulus of elasticity",
                        "allowable stress"));
            case "wire" ->
                wire(spring.partOrMissing(
                        "wire",
                        "the wire of a coil",
                        "wire diameter",
                        "mean diameter",
                        "working coils",
                        "shear modulus"));
            case "bar" ->
                bar(spring.partOrMissing("bar", "a torsion bar", "diameter", "length", "arm", "shear modulus"));
            case "gas" ->
                gas(spring.partOrMissing("gas", "an enclosed gas", "piston area", "volume", "load", "exponent"));
            default ->
                new Elasticity.Rate(
                        spring.measureIfAny("rate", QuantityKind.RATE).orElse(Values.standIn(QuantityKind.RATE)));
        };
    }

    private static Elasticity table(Part spring) {
        return new Elasticity.Table(spring.rows("table", QuantityKind.LENGTH, QuantityKind.FORCE).stream()
                .map(row -> new TablePoint(row.get(0), row.get(1)))
                .toList());
    }

    private static Elasticity leaves(Part part) {
        if (!part.has("pack")) {
            part.missing("pack", "a list such as [{number: 5, width: 45 mm, thickness: 6 mm}]");
        }
        List<Leaves> pack = part.parts("pack", "a group of like leaves", "number", "width", "thickness").stream()
                .map(group -> new Leaves(
                        group.count("number", 1, 1),
                        group.measure("width", QuantityKind.LENGTH),
                        group.measure("thickness", QuantityKind.LENGTH)))
                .toList();
        return new Elasticity.LeafPack(
                pack,
                part.measure("length", QuantityKind.LENGTH),
                part.count("extra full length leaves", 0, 0),
                part.measureOrZero("clamp", QuantityKind.LENGTH),
                part.measureIfAny("long arm", QuantityKind.LENGTH),
                part.measureOr("modulus of elasticity", YOUNGS_MODULUS),
                part.measureIfAny("allowable stress", QuantityKind.PRESSURE));
    }

    private static Elasticity wire(Part part) {
        return new Elasticity.CoilWire(
                part.measure("wire diameter", QuantityKind.LENGTH),
                part.measure("mean diameter", QuantityKind.LENGTH),
                part.number("working coils"),
                part.measureOr("shear modulus", SHEAR_MODULUS));
    }

    private static Elasticity bar(Part part) {
        return new Elasticity.TorsionRod(
                part.measure("diameter", QuantityKind.LENGTH),
                part.measure("length", QuantityKind.LENGTH),
                part.measure("arm", QuantityKind.LENGTH),
                part.measureOr("shear modulus", SHEAR_MODULUS));
    }

    private static Elasticity gas(Part part) {
        return new Elasticity.GasColumn(
                part.measure("piston area", QuantityKind.AREA),
                part.measure("volume", QuantityKind.VOLUME),
                part.measure("load", QuantityKind.FORCE),
                part.number("exponent"));
    }
}

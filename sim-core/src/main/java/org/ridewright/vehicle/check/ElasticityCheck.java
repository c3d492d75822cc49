package org.ridewright.vehicle.check;

import java.util.List;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Elasticity.Leaves;
import org.ridewright.vehicle.Elasticity.TablePoint;

/** Judges the elastic law of the spring at {@code path}. */
record ElasticityCheck(String path, Faults faults) {
    private static final int FEWEST_POINTS = 2;

    void run(Elasticity elasticity) {
        if (elasticity instanceof Elasticity.Rate rate) {
            faults.positive(path + ".rate", rate.rate());
        } else if (elasticity instanceof Elasticity.Table table) {
            table(table.points(), path + ".table");
        } else if (elasticity instanceof Elasticity.LeafPack pack) {
            leaves(pack, path + ".leaves");
        } else if (elasticity instanceof Elasticity.CoilWire wire) {
            wire(wire, path + ".wire");
        } else if (elasticity instanceof Elasticity.TorsionRod bar) {
            faults.positive(path + ".bar.diameter", bar.diameter());
            faults.positive(path + ".bar.length", bar.length());
            faults.positive(path + ".bar.arm", bar.arm());
            faults.positive(path + ".bar.shear modulus", bar.shearModulus());
        } else if (elasticity instanceof Elasticity.GasColumn gas) {
            gas(gas, path + ".gas");
        }
    }

    private void table(List<TablePoint> points, String at) {
        if (points.size() < FEWEST_POINTS) {
            faults.add(
                    at,
                    "",
                    "has fewer than two points",
                    "rows [compression, force], such as [0 mm, 0 N]",
                    "add points, or give a rate");
        }
        for (int i = 1; i < points.size(); i++) {
            TablePoint before = points.get(i - 1);
            TablePoint here = points.get(i);
            String row = at + "[" + i + "]";
            String previous = at + "[" + (i - 1) + "]";
            if (here.compression().value() <= before.compression().value()) {
                faults.add(
                        row + "[0]",
                        here.compression().written(),
                        "is not more than the compression before it, "
                                + before.compression().written(),
                        "compressions that rise from row to row",
                        "put the rows in order and leave out double ones",
                        previous);
            }
            if (here.force().value() < before.force().value()) {
                faults.add(
                        row + "[1]",
                        here.force().written(),
                        "is less than the force before it, " + before.force().written(),
                        "a force that does not fall as the spring is compressed",
                        "check this reading and the one before",
                        previous);
            }
        }
    }

    private void leaves(Elasticity.LeafPack pack, String at) {
        if (pack.leaves().isEmpty()) {
            faults.add(
                    at + ".pack",
                    "",
                    "has no leaves",
                    "at least one group of leaves",
                    "add {number: ..., width: ..., thickness: ...}");
        }
        for (int i = 0; i < pack.leaves().size(); i++) {
            Leaves group = pack.leaves().get(i);
            faults.positive(at + ".pack[" + i + "].width", group.width());
            faults.positive(at + ".pack[" + i + "].thickness", group.thickness());
        }
        faults.positive(at + ".length", pack.length());
        faults.notNegative(at + ".clamp", pack.clampDeduction());
        faults.positive(at + ".long arm", pack.longArm());
        faults.positive(at + ".modulus of elasticity", pack.modulus());
        faults.positive(at + ".allowable stress", pack.allowableStress());
        if (pack.clampDeduction().value() >= pack.length().value()) {
            faults.add(
                    at + ".clamp",
                    pack.clampDeduction().written(),
                    "is not shorter than the spring of " + pack.length().written(),
                    "the length that the clamp takes out of action",
                    "check the unit",
                    at + ".length");
        }
        pack.longArm()
                .filter(arm -> arm.value() >= pack.length().value())
                .ifPresent(arm -> faults.add(
                        at + ".long arm",
                        arm.written(),
                        "is not shorter than the whole spring of "
                                + pack.length().written(),
                        "the length from the clamp or pivot to the farther eye",
                        "check the unit",
                        at + ".length"));
    }

    private void wire(Elasticity.CoilWire wire, String at) {
        faults.positive(at + ".wire diameter", wire.wireDiameter());
        faults.positive(at + ".mean diameter", wire.meanDiameter());
        faults.positive(at + ".shear modulus", wire.shearModulus());
        if (!(wire.workingCoils() > 0)) {
            faults.add(
                    at + ".working coils",
                    Faults.plain(wire.workingCoils()),
                    "is not above 0",
                    "a number of coils",
                    "count the coils that are free to move");
        }
        if (wire.wireDiameter().value() >= wire.meanDiameter().value()) {
            faults.add(
                    at + ".wire diameter",
                    wire.wireDiameter().written(),
                    "is not thinner than the coil's mean diameter of "
                            + wire.meanDiameter().written(),
                    "the thickness of the wire",
                    "exchange the two, or check the unit",
                    at + ".mean diameter");
        }
    }

    private void gas(Elasticity.GasColumn gas, String at) {
        faults.positive(at + ".piston area", gas.area());
        faults.positive(at + ".volume", gas.volume());
        faults.positive(at + ".load", gas.load());
        if (gas.exponent() < 1 || gas.exponent() > 1.67) {
            faults.add(
                    at + ".exponent",
                    Faults.plain(gas.exponent()),
                    "is not the exponent of a gas",
                    "1 for slow to 1.4 for quick changes of air or nitrogen, at most 1.67",
                    "write 1.3 if nothing better is known");
        }
    }
}

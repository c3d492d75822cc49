package org.ridewright.vehicle.check;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.GappedStage;
import org.ridewright.vehicle.SpringKind;

/** Judges the law of one spring, at an axle or between axles. */
record SpringLawCheck(String path, Faults faults, List<String> loadCases) {
    void run(SpringKind kind, Elasticity elasticity, Damping damping, Friction friction, List<GappedStage> stages) {
        kindFits(kind, elasticity);
        law(elasticity, damping, friction, stages);
    }

    /** As {@link #run}, of a spring whose kind is not stated. */
    void law(Elasticity elasticity, Damping damping, Friction friction, List<GappedStage> stages) {
        new ElasticityCheck(path, faults).run(elasticity);
        DampingCheck.coefficientOnly(path, damping, faults);
        new FrictionCheck(path, faults).run(friction, elasticity, stages);
        stages(stages);
    }

    private void kindFits(SpringKind kind, Elasticity elasticity) {
        boolean fits = true;
        String key = "";
        if (elasticity instanceof Elasticity.LeafPack) {
            fits = kind.isLeaf();
            key = "leaves";
        } else if (elasticity instanceof Elasticity.CoilWire) {
            fits = kind == SpringKind.COIL;
            key = "wire";
        } else if (elasticity instanceof Elasticity.TorsionRod) {
            fits = kind == SpringKind.TORSION_BAR;
            key = "bar";
        } else if (elasticity instanceof Elasticity.GasColumn) {
            fits = kind == SpringKind.AIR;
            key = "gas";
        }
        if (!fits) {
            faults.add(
                    path + ".kind",
                    kind.word(),
                    "is not a spring described by '" + key + "'",
                    "a kind that fits, or a rate or table, which fit every kind",
                    "remove 'kind', or give a rate",
                    path + "." + key);
        }
    }

    private void stages(List<GappedStage> stages) {
        Map<GappedStage.Kind, Integer> seen = new EnumMap<>(GappedStage.Kind.class);
        for (GappedStage stage : stages) {
            int index = seen.merge(stage.kind(), 1, Integer::sum) - 1;
            String at = path + "." + stage.kind().word() + "[" + index + "]";
            faults.positive(at + ".rate", stage.rate());
            boolean strapUnderLoad = stage.kind() == GappedStage.Kind.DROOP_STOP
                    && stage.measuredAt().isEmpty();
            if (!strapUnderLoad) {
                String travel = stage.kind() == GappedStage.Kind.HELPER ? ".gap" : ".clearance";
                faults.notNegative(at + travel, stage.clearance());
            }
            stage.measuredAt().ifPresent(name -> faults.known(at + ".measured with", name, loadCases, "load case"));
        }
    }
}

package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.RealMatrix;
import org.ridewright.quantity.Adjustable;
import org.ridewright.vehicle.Vehicle;

/**
 * Which values anything measured depends on at all.
 *
 * @param sought values that some fitted datum feels, or that were asked for by name
 * @param untouched paths of those that none feels
 */
record Screening(List<Unknown> sought, List<String> untouched) {
    static Screening of(Adjustable<Vehicle> file, List<Unknown> candidates, List<Evidence> evidence, boolean keepAll) {
        if (keepAll || candidates.isEmpty() || evidence.isEmpty()) {
            return new Screening(candidates, List.of());
        }
        YardModel model = new YardModel(file, candidates, evidence);
        FitProblem problem = new FitProblem(model.unknowns().size(), model.data(), model);
        RealMatrix effects = problem.jacobian(new double[problem.unknowns()]);
        List<Unknown> sought = new ArrayList<>();
        List<String> untouched = new ArrayList<>();
        for (int j = 0; j < candidates.size(); j++) {
            if (effects.getColumnVector(j).getNorm() > Held.NOTHING) {
                sought.add(candidates.get(j));
            } else {
                untouched.add(candidates.get(j).path());
            }
        }
        return new Screening(List.copyOf(sought), List.copyOf(untouched));
    }

    /** Index of the entry that is greatest in size. */
    static int most(double[] column) {
        int most = 0;
        for (int i = 1; i < column.length; i++) {
            if (Math.abs(column[i]) > Math.abs(column[most])) {
                most = i;
            }
        }
        return most;
    }
}

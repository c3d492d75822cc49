package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;

/**
 * Several unknowns of which the data know one combination much better than any by itself, {@code Σ v_j z_j}: an eigenvector of {@code JᵀJ}.
 *
 * @param members indices of the unknowns
 * @param weights v of each
 * @param deviation standard deviation of the combination (1)
 * @param words the same for a reader
 */
public record Together(List<Integer> members, List<Double> weights, double deviation, String words) {
    /** A combination counts as known if its spread shrinks to this part. */
    private static final double KNOWN = 0.5;
    /** A member is known less well by this factor than the combination. */
    private static final double LESS = 2;
    /** Smaller parts of an eigenvector are left out of the words. */
    private static final double PART = 0.3;

    static List<Together> of(
            List<Unknown> unknowns, FitProblem problem, MostProbable.Found found, Posterior posterior) {
        RealMatrix fitted = problem.stackedJacobian(found.jacobian());
        RealMatrix information = fitted.transposeMultiply(fitted);
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(information, 1e-14, true);
        List<Together> list = new ArrayList<>();
        for (int k = 0; k < unknowns.size(); k++) {
            double deviation = Math.sqrt(posterior.birge() / eigen.getEigenvalue(k));
            double[] v = eigen.getEigenvector(k).toArray();
            List<Integer> members = IntStream.range(0, v.length)
                    .filter(j -> Math.abs(v[j]) > PART)
                    .boxed()
                    .sorted(Comparator.comparingDouble(j -> -Math.abs(v[j])))
                    .toList();
            boolean each = members.stream().allMatch(j -> posterior.deviation(j) > LESS * deviation);
            if (deviation < KNOWN && members.size() > 1 && each) {
                list.add(new Together(
                        members,
                        members.stream().map(j -> v[j]).toList(),
                        deviation,
                        words(unknowns, members, v, posterior)));
            }
        }
        return list;
    }

    private static String words(List<Unknown> unknowns, List<Integer> members, double[] v, Posterior posterior) {
        String names = members.stream().map(j -> unknowns.get(j).path()).collect(Collectors.joining(" and ", "", ""));
        boolean factors =
                members.stream().allMatch(j -> unknowns.get(j).spread().byFactors());
        String known;
        if (factors) {
            double first =
                    v[members.get(0)] / unknowns.get(members.get(0)).spread().deviation();
            List<String> above = new ArrayList<>();
            List<String> below = new ArrayList<>();
            for (int j : members) {
                double power = v[j] / unknowns.get(j).spread().deviation() / first;
                (power > 0 ? above : below).add(term(unknowns.get(j).path(), Math.abs(power)));
            }
            String top = String.join(" × ", above);
            known = below.isEmpty() ? "the product " + top : "the ratio " + top + " to " + String.join(" × ", below);
        } else {
            int first = members.get(0);
            known = "only how "
                    + names
                    + " hang together: "
                    + unknowns.get(first).deviationInWords(1)
                    + " more of the first looks like "
                    + members.stream()
                            .skip(1)
                            .map(j -> unknowns.get(j).deviationInWords(Math.abs(v[first] / v[j]))
                                    + (v[j] * v[first] > 0 ? " more of " : " less of ")
                                    + unknowns.get(j).path())
                            .collect(Collectors.joining(", or "));
        }
        String each = members.stream()
                .map(j -> "± " + unknowns.get(j).deviationInWords(posterior.deviation(j)))
                .collect(Collectors.joining(" and "));
        return "The data cannot tell " + names + " apart. They know " + known + "; each alone stays at " + each + ".";
    }

    private static String term(String name, double power) {
        return Math.abs(power - 1) < 0.15 ? name : String.format(Locale.ROOT, "%s^%.1f", name, power);
    }
}

package org.ridewright.validation;

import java.util.List;
import org.ridewright.road.RoughnessClass;

/** Classes of road roughness, {@code Gd(n) = Gd(n₀)(n/n₀)^−2} with n₀ = 0.1 cycle/m. */
final class RoadClasses implements ReferenceProblem {
    private static final Source MEANS = Source.standard("ISO 8608:2016 annex C");
    private static final Source LIMITS = Source.standard("ISO 8608:2016 annex C (from memory)");

    @Override
    public String title() {
        return "Classes of road roughness";
    }

    @Override
    public String statement() {
        return "Geometric means and upper limits of Gd(0.1 cycle/m).";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (ReferenceTable.Row row : ReferenceTable.read("iso8608_classes.csv").rows()) {
            String name = row.text("class");
            RoughnessClass ours = RoughnessClass.valueOf(name);
            double mean = row.number("Gd_n0_geomean_m3");
            rows.relative(MEANS, name + ": geometric mean", "m³", mean, ours.geometricMean(), 1e-12);
            row.given("Gd_n0_upper_m3")
                    .ifPresent(
                            limit -> rows.relative(LIMITS, name + ": upper limit", "m³", limit, ours.upper(), 1e-12));
        }
        return rows.list();
    }
}

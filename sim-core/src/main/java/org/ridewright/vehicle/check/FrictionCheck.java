package org.ridewright.vehicle.check;

import java.util.List;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Elasticity.TablePoint;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.Friction.LockedRate;
import org.ridewright.vehicle.Friction.SliderShare;
import org.ridewright.vehicle.GappedStage;

/** Judges the friction of the spring or joint at {@code path}. */
record FrictionCheck(String path, Faults faults) {
    private static final double SHARE_ROUNDING = 1e-6;
    /** Friction that turns over in less than this is as good as a slider, and takes steps as short (m). */
    private static final double LEAST_ENVELOPE = 1e-6;

    void run(Friction friction, Elasticity elasticity, List<GappedStage> stages) {
        limits(friction);
        if (friction.shareOfLoad().value() > 0) {
            lockedRate(friction, steepest(elasticity, stages));
        }
    }

    /** Of a joint whose friction does not depend on load. */
    void limits(Friction friction) {
        String at = path + ".friction";
        Measure share = friction.shareOfLoad();
        faults.notNegative(at + ".share of load", share);
        if (share.value() >= 1) {
            String fix = share.written().matches("[\\d.]+") ? "write " + share.written() + " %" : "";
            faults.add(
                    at + ".share of load",
                    share.written(),
                    "is not below 1",
                    "a share from 0 to below 1, such as 6 %",
                    fix);
        }
        faults.notNegative(at + ".constant", friction.constant());
        faults.positive(at + ".envelope length", friction.envelopeLength());
        friction.envelopeLength()
                .filter(length -> length.value() > 0 && length.value() < LEAST_ENVELOPE)
                .ifPresent(length -> faults.add(
                        at + ".envelope length",
                        length.written(),
                        "is less than 0.001 mm",
                        "the travel after a reversal over which friction turns over, such as 2 mm",
                        "check the unit, or leave it out for friction that locks"));
        if (friction.lockedRate() instanceof LockedRate.Given given) {
            faults.positive(at + ".locked rate", given.rate());
        } else if (friction.lockedRate() instanceof LockedRate.MultipleOfRate multiple) {
            faults.positive(at + ".locked rate", multiple.multiple());
        }
        sliders(friction.sliders(), at + ".sliders");
    }

    /** {@code k_p > μ f_e'}: else the friction could never hold what the rising load lets it. */
    private void lockedRate(Friction friction, double steepest) {
        double share = friction.shareOfLoad().value();
        String at = path + ".friction.locked rate";
        String law = path + ".rate";
        if (friction.lockedRate() instanceof LockedRate.Given given
                && given.rate().value() > 0
                && given.rate().value() <= share * steepest) {
            faults.add(
                    at,
                    given.rate().written(),
                    "is not more than the share of load times the spring's greatest rate",
                    "more than " + newtonsPerMillimetre(share * steepest),
                    "give the slope of the load–deflection curve just after a reversal, less that of the spring",
                    law,
                    path + ".table",
                    path + ".helper",
                    path + ".friction.share of load");
        } else if (friction.lockedRate() instanceof LockedRate.MultipleOfRate multiple
                && multiple.multiple().value() > 0
                && multiple.multiple().value() <= share) {
            faults.add(
                    at,
                    multiple.multiple().written() + " times",
                    "is not more than the share of load",
                    "a multiple of the rate greater than " + Faults.plain(share),
                    "write 2 times if it was not measured",
                    path + ".friction.share of load");
        }
    }

    /** Greatest slope of the elastic law with its helpers (N/m), where it is given directly; else 0. */
    private static double steepest(Elasticity elasticity, List<GappedStage> stages) {
        double helpers = stages.stream()
                .filter(stage -> stage.kind() == GappedStage.Kind.HELPER)
                .mapToDouble(stage -> stage.rate().value())
                .sum();
        if (elasticity instanceof Elasticity.Rate rate && rate.rate().kind() == QuantityKind.RATE) {
            return rate.rate().value() + helpers;
        }
        if (elasticity instanceof Elasticity.Table table) {
            double steepest = 0;
            for (int i = 1; i < table.points().size(); i++) {
                TablePoint a = table.points().get(i - 1);
                TablePoint b = table.points().get(i);
                double run = b.compression().value() - a.compression().value();
                steepest = run > 0
                        ? Math.max(steepest, (b.force().value() - a.force().value()) / run)
                        : steepest;
            }
            return steepest + helpers;
        }
        return 0;
    }

    private void sliders(List<SliderShare> sliders, String at) {
        double ofLimit = 0;
        double ofRate = 0;
        for (int i = 0; i < sliders.size(); i++) {
            SliderShare share = sliders.get(i);
            share(share.ofLimit(), at + "[" + i + "].of limit");
            share(share.ofLockedRate(), at + "[" + i + "].of locked rate");
            ofLimit += share.ofLimit();
            ofRate += share.ofLockedRate();
        }
        if (!sliders.isEmpty()) {
            sum(ofLimit, at, "of limit");
            sum(ofRate, at, "of locked rate");
        }
    }

    private void share(double share, String at) {
        if (!(share > 0) || share > 1) {
            faults.add(
                    at,
                    Faults.plain(share),
                    "is not a share of a whole",
                    "above 0 to 1, such as 50 %",
                    "write a percentage");
        }
    }

    private void sum(double sum, String at, String key) {
        if (Math.abs(sum - 1) > SHARE_ROUNDING) {
            faults.add(
                    at,
                    "",
                    "has shares '" + key + "' that add up to " + Faults.plain(100 * sum) + " %",
                    "shares that add up to 100 %",
                    "change the last share");
        }
    }

    private static String newtonsPerMillimetre(double rate) {
        return Faults.plain(rate / 1000) + " N/mm";
    }
}

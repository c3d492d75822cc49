package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ridewright.calibration.CalibratedVehicle;
import org.ridewright.calibration.Calibration;
import org.ridewright.calibration.Held;
import org.ridewright.calibration.Posterior;
import org.ridewright.calibration.Residual;
import org.ridewright.calibration.RideOverlay;
import org.ridewright.calibration.Together;
import org.ridewright.calibration.Unknown;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Vehicle;

/** A calibration in words and numbers as people read them. */
public final class CalibrationWords {
    /** Values that were not sought and are told one by one. */
    private static final int MOST_HELD = 5;
    /** A chance of misfit below this is told. */
    private static final double HARDLY = 0.1;

    private CalibrationWords() {}

    /** Where an unknown stands in the file, with the names of axles, seats and load cases. */
    public static String path(CalibratedVehicle calibrated, int j) {
        return named(calibrated.fit().unknowns().get(j).path(), calibrated.before());
    }

    /** An unknown before the fit, with its tolerance. */
    public static String before(Calibration fit, int j) {
        Unknown unknown = fit.unknowns().get(j);
        return value(
                unknown.spread().kind(),
                unknown.spread().central(),
                (unknown.spread().at(1) - unknown.spread().at(-1)) / 2);
    }

    /** An unknown after the fit, with its standard error. */
    public static String now(Calibration fit, int j) {
        return value(fit.unknowns().get(j).spread().kind(), fit.value(j), fit.standardError(j));
    }

    /** The 90 % interval of an unknown after the fit, or before. */
    static String interval(Calibration fit, int j) {
        QuantityKind kind = fit.unknowns().get(j).spread().kind();
        double error = fit.standardError(j);
        return bare(kind, fit.lower(j), error) + " to " + bare(kind, fit.upper(j), error);
    }

    private static String value(QuantityKind kind, double value, double error) {
        return Measures.format(new Measure(kind, value, Math.abs(error), Provenance.CALIBRATED, ""));
    }

    private static String bare(QuantityKind kind, double value, double error) {
        return value(kind, value, error).replaceAll("\\s*±\\s*\\S+", "");
    }

    /** A measurement with its uncertainty. */
    public static String observed(Residual residual) {
        String unit = residual.datum().unit();
        return (number(residual, residual.datum().observed())
                        + " ± "
                        + Numbers.of(residual.datum().uncertainty(), 2)
                        + " "
                        + unit)
                .strip();
    }

    /** A number of a datum to a tenth of its uncertainty. */
    public static String number(Residual residual, double value) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(residual.datum().uncertainty())) + 1);
        return String.format(Locale.ROOT, "%." + Math.min(6, decimals) + "f", value)
                .replace('-', '−');
    }

    /** What the reader should know first, as whole sentences. */
    public static List<String> answers(CalibratedVehicle calibrated) {
        Calibration fit = calibrated.fit();
        List<String> answers = new ArrayList<>();
        long narrowed = calibrated.ofVehicle()
                - fit.notNarrowed().stream()
                        .filter(j -> j < calibrated.ofVehicle())
                        .count();
        answers.add("%d of %d sought values of %s became known better by more than 5 %%."
                .formatted(narrowed, calibrated.ofVehicle(), calibrated.after().name()));
        answers.add(agreement(fit));
        fit.residuals().stream()
                .filter(r -> r.datum().group().isBlank() && r.disagrees())
                .forEach(r -> answers.add(disagreeing(fit, r)));
        for (int j = 0; j < calibrated.ofVehicle(); j++) {
            if (Math.abs(fit.move(j)) > 3) {
                answers.add("The file's %s contradicts the measurements: %s in the file, %s now."
                        .formatted(path(calibrated, j), before(fit, j), now(fit, j)));
            }
        }
        keptBack(fit).ifPresent(answers::add);
        for (RideOverlay ride : calibrated.rides()) {
            answers.add(
                    "%s%s: the calibrated vehicle explains %s of what was logged below %s Hz, the file as it was %s."
                            .formatted(
                                    RideFigures.upperFirst(ride.label()),
                                    ride.keptBack() ? " (kept back)" : "",
                                    Numbers.percent(ride.explainedAfter()),
                                    Numbers.of(RideOverlay.BAND),
                                    Numbers.percent(ride.explainedBefore())));
        }
        if (!calibrated.untied().isEmpty()) {
            answers.add(named(
                    "An earlier calibration of this file ties sought values to these, which were not sought: "
                            + String.join(", ", calibrated.untied())
                            + ". What it knew of them together was not used, so the intervals are not quite right: leave 'unknowns' out, or name these too.",
                    calibrated.before()));
        }
        if (!fit.atRest()) {
            answers.add(
                    "The search did not come quite to rest: cycles are counted whole, and the data change in steps with the vehicle. "
                            + "The estimate may be off by a part of its standard errors.");
        }
        fit.other()
                .ifPresent(z -> answers.add(
                        "Another set of values explains the data as well. The intervals tell of one of them only: "
                                + "measure something that tells the two apart."));
        return answers;
    }

    private static String disagreeing(Calibration fit, Residual r) {
        String what = RideFigures.upperFirst(r.datum().label());
        String figures = observed(r) + " measured, " + number(r, r.predicted()) + " expected";
        return fit.atRest()
                ? what + " disagrees with the rest: " + figures + ". Measure it again, or look for a slip."
                : what + " seems to disagree with the rest: " + figures
                        + ". Counts change in steps with the vehicle, which may be all; if others disagree too, begin with those.";
    }

    private static String agreement(Calibration fit) {
        double birge = fit.posterior().birge();
        String sum = "The least sum of squares is %s for %d data"
                .formatted(Numbers.of(fit.objective(), 2), fit.dataFitted());
        if (birge > 1) {
            return sum
                    + ", more than their uncertainties allow (chance %s): something is off by more than was stated, and every interval was made %s times as wide."
                            .formatted(chance(fit.posterior()), Numbers.of(Math.sqrt(birge), 2));
        }
        String within =
                "they agree with one another, with the file's tolerances and with the model within their uncertainties";
        return fit.posterior().chanceOfMisfit() < HARDLY
                ? sum + ": only just do " + within + " (chance " + chance(fit.posterior()) + ")."
                : sum + ": " + within + ".";
    }

    private static String chance(Posterior posterior) {
        return posterior.chanceOfMisfit() < 1e-4 ? "below 0.01 %" : Numbers.percent(posterior.chanceOfMisfit());
    }

    private static Optional<String> keptBack(Calibration fit) {
        List<Residual> kept = fit.keptBack();
        if (kept.isEmpty()) {
            return Optional.empty();
        }
        long within = kept.stream().filter(Residual::within).count();
        return Optional.of(
                "Of %d data that were kept back, %d lie within the 90 %% interval that was predicted for them."
                        .formatted(kept.size(), within));
    }

    /** A text in which axles, seats and load cases that are counted are called by their names. */
    public static String named(String text, Vehicle vehicle) {
        String named = text;
        for (int i = 0; i < vehicle.axles().size(); i++) {
            named = named.replace(
                    "axles[" + i + "]", "axles[" + vehicle.axles().get(i).name() + "]");
        }
        for (int i = 0; i < vehicle.seats().size(); i++) {
            named = named.replace(
                    "seats[" + i + "]", "seats[" + vehicle.seats().get(i).name() + "]");
        }
        for (int i = 0; i < vehicle.loadCases().size(); i++) {
            named = named.replace(
                    "load cases[" + i + "]",
                    "load cases[" + vehicle.loadCases().get(i).name() + "]");
        }
        return named;
    }

    /** What cannot be told apart or became no better known, as whole sentences. */
    static List<String> unclear(CalibratedVehicle calibrated) {
        Calibration fit = calibrated.fit();
        int n = calibrated.ofVehicle();
        List<String> list = new ArrayList<>(fit.together().stream()
                .filter(t -> t.members().stream().anyMatch(j -> j < n))
                .map(Together::words)
                .toList());
        List<String> same = fit.notNarrowed().stream()
                .filter(j -> j < n)
                .map(j -> fit.unknowns().get(j).path())
                .toList();
        if (!same.isEmpty()) {
            list.add("No better known than before: " + String.join(", ", same) + ".");
        }
        if (!calibrated.untouched().isEmpty()) {
            list.add("Nothing that was measured depends on these to any extent; they stay as they are: "
                    + String.join(", ", calibrated.untouched()) + ".");
        }
        if (!calibrated.held().isEmpty()) {
            list.add(held(calibrated.held()));
        }
        return list.stream().map(text -> named(text, calibrated.before())).toList();
    }

    private static String held(List<Held> held) {
        String most = held.stream()
                .limit(MOST_HELD)
                .map(h -> "%s (one tolerance moves '%s' by %s of its uncertainties)"
                        .formatted(h.path(), h.datum(), Numbers.of(h.effect(), 2)))
                .collect(Collectors.joining("; "));
        int more = held.size() - MOST_HELD;
        return "Not sought, though uncertain; they stay as in the file, and what their tolerances do to the data widens the intervals: "
                + most
                + (more > 0 ? "; and " + more + " more that do less" : "")
                + ".";
    }
}

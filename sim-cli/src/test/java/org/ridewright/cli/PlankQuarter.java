package org.ridewright.cli;

/** A quarter vehicle that rides over a plank in milliseconds, as files of a user would have it. */
final class PlankQuarter {
    /** For {@code quarter.yaml}. */
    static final String VEHICLE = """
            vehicle: Test quarter
            layout: quarter
            body: {mass: 300 kg ± 5 %}
            axles:
              - name: wheel
                behind front axle: 0 m
                unsprung mass: 40 kg ± 10 %
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m ± 10 %, contact damping ratio: 0.15}
                springs: [{name: coil, kind: coil, rate: 20 kN/m ± 8 %}]
                dampers: [{name: strut, bump: 1200 N s/m, rebound: 1200 N s/m}]
            load cases: [{name: empty, aboard: []}, {name: laden, aboard: [{cargo: sand, mass: 100 kg}]}]
            """;

    /** For a scenario beside it. */
    static final String SCENARIO = """
            scenario: A plank
            vehicles: [{file: quarter.yaml, speeds: [10 km/h]}]
            road:
              name: plank
              obstacles: [{plank: {at: 1 m, height: 30 mm ± 1 mm, length: 150 mm}}]
            duration: 2 s
            """;

    private PlankQuarter() {}
}

package org.ridewright.study;

/** Hashes of all that a run rests on: the files, the questions, and what the run changes, in the order in which it does. */
final class RunKeys {
    private static final int DIGITS = 16;

    private final Study study;
    private final String ground;

    RunKeys(Study study) {
        this.study = study;
        Digest digest = new Digest().put(study.fingerprint());
        study.questions().forEach(q -> digest.put(q.name()));
        ground = digest.hex();
    }

    /** Of a trial, in 16 hexadecimal digits. */
    String of(Trial trial) {
        Digest digest = new Digest().put(ground).put(Integer.toString(trial.variant()));
        study.variants()
                .get(trial.variant())
                .within()
                .forEach((path, text) -> digest.put(path).put(text));
        // of two paths that mean one value the later prevails
        trial.texts().forEach((path, text) -> digest.put(path).put(text));
        return digest.hex().substring(0, DIGITS);
    }
}

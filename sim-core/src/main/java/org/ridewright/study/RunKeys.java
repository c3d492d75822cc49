package org.ridewright.study;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Map;
import java.util.TreeMap;

/** Hashes of all that a run rests on: the files, the questions, and what the run changes. */
final class RunKeys {
    private final byte[] ground;

    RunKeys(Study study) {
        MessageDigest digest = sha256();
        put(digest, study.fingerprint());
        study.questions().forEach(q -> put(digest, q.name()));
        ground = digest.digest();
    }

    /** Of a trial, in 16 hexadecimal digits. */
    String of(Trial trial) {
        MessageDigest digest = sha256();
        digest.update(ground);
        put(digest, Integer.toString(trial.variant()));
        for (Map.Entry<String, String> change : new TreeMap<>(trial.texts()).entrySet()) {
            put(digest, change.getKey());
            put(digest, change.getValue());
        }
        byte[] hash = digest.digest();
        StringBuilder hex = new StringBuilder();
        for (int i = 0; i < 8; i++) {
            hex.append(String.format("%02x", hash[i]));
        }
        return hex.toString();
    }

    private static void put(MessageDigest digest, String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}

package org.ridewright.study;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A hash (SHA-256) of texts and bytes in their order, each told from the next by its length. */
public final class Digest {
    private final MessageDigest digest;

    public Digest() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** Takes a text. */
    public Digest put(String text) {
        return put(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Takes bytes. */
    public Digest put(byte[] bytes) {
        digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
        digest.update(bytes);
        return this;
    }

    /** The hash, in 64 hexadecimal digits; nothing can be put in afterwards. */
    public String hex() {
        return HexFormat.of().formatHex(digest.digest());
    }
}

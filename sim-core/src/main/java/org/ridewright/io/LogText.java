package org.ridewright.io;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The text of a log: UTF-8 or UTF-16, with a byte order mark or without, else Windows-1252.
 *
 * @param file where it is
 * @param charset how its bytes are letters
 * @param mark bytes of the byte order mark
 * @param beginning its first lines, whole ones only
 */
record LogText(Path file, Charset charset, int mark, List<String> beginning) {
    private static final int LOOK_AHEAD = 1 << 16;
    private static final Charset WESTERN = Charset.forName("windows-1252");

    /**
     * Looks at the beginning of a file.
     *
     * @throws InputException if it cannot be read, is empty or is no text
     */
    static LogText of(Path file, Reading reading) {
        byte[] bytes = head(file, reading);
        if (bytes.length == 0) {
            refuse(reading, "the file is empty", "rows of time and acceleration", "export the log again");
        }
        if (bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K') {
            refuse(
                    reading,
                    "the file is a spreadsheet or an archive, not text",
                    "comma-separated values (CSV)",
                    "unpack it, or open it and save it as CSV");
        }
        int mark = 0;
        Charset charset;
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
            charset = StandardCharsets.UTF_8;
            mark = 3;
        } else if (starts(bytes, 0xFF, 0xFE)) {
            charset = StandardCharsets.UTF_16LE;
            mark = 2;
        } else if (starts(bytes, 0xFE, 0xFF)) {
            charset = StandardCharsets.UTF_16BE;
            mark = 2;
        } else {
            charset = unmarked(bytes);
        }
        String text = decoded(bytes, mark, charset);
        if (controls(text) > text.length() / 100) {
            refuse(reading, "the file is not text", "comma-separated values (CSV) in UTF-8", "export the log as CSV");
        }
        boolean whole = bytes.length < LOOK_AHEAD;
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (!whole && lines.size() > 1) {
            lines.remove(lines.size() - 1);
        }
        return new LogText(file, charset, mark, List.copyOf(lines));
    }

    /** From its first letter on. */
    BufferedReader open() throws IOException {
        InputStream in = Files.newInputStream(file);
        try {
            in.skipNBytes(mark);
            CharsetDecoder decoder = charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPLACE)
                    .onUnmappableCharacter(CodingErrorAction.REPLACE);
            return new BufferedReader(new InputStreamReader(in, decoder));
        } catch (IOException | RuntimeException failed) {
            in.close();
            throw failed;
        }
    }

    private static byte[] head(Path file, Reading reading) {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(LOOK_AHEAD);
        } catch (NoSuchFileException missing) {
            String fix =
                    TreeFile.nearestFile(file).map(near -> "write " + near).orElse("check the name and the folder");
            refuse(reading, "there is no such file", "", fix);
        } catch (IOException unreadable) {
            String why = Files.isDirectory(file) ? "is a folder" : "cannot be read (" + unreadable.getMessage() + ")";
            refuse(reading, why, "a file that may be read", "");
        }
        return new byte[0];
    }

    static void refuse(Reading reading, String fault, String expected, String fix) {
        reading.problem(Spot.WHOLE_FILE, "", "", fault, expected, fix);
        throw new InputException(reading.problems());
    }

    private static boolean starts(byte[] bytes, int... with) {
        for (int i = 0; i < with.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != with[i]) {
                return false;
            }
        }
        return true;
    }

    /** Every other byte of plain text in UTF-16 is zero. */
    private static Charset unmarked(byte[] bytes) {
        int even = 0;
        int odd = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                even += i % 2 == 0 ? 1 : 0;
                odd += i % 2;
            }
        }
        if (odd > bytes.length / 3 && even < bytes.length / 100 + 1) {
            return StandardCharsets.UTF_16LE;
        }
        if (even > bytes.length / 3 && odd < bytes.length / 100 + 1) {
            return StandardCharsets.UTF_16BE;
        }
        CharsetDecoder strict = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        // a letter cut by the end of what was looked at is no error
        return strict.decode(ByteBuffer.wrap(bytes), out, false).isError() ? WESTERN : StandardCharsets.UTF_8;
    }

    private static String decoded(byte[] bytes, int mark, Charset charset) {
        return new String(bytes, mark, bytes.length - mark, charset);
    }

    private static long controls(String text) {
        return text.chars()
                .filter(c -> c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f')
                .count();
    }
}

// SPDX-License-Identifier: EPL-2.0
package twinfeed.fuzz;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Damages files. The same seed makes the same damage. */
final class Mutator {
    /** What readers stumble over: numbers at the edge, marks of other formats, signs that look like others. */
    private static final List<String> TOKENS = List.of(
            "NaN",
            "Infinity",
            "-Infinity",
            "1e400",
            "-1e-400",
            "1E999999999",
            "0",
            "-0",
            "-1",
            "99999999999999999999999999",
            "2147483648",
            "0.1e-9999999",
            "١٢",
            "1,5",
            "1.5.5",
            "½",
            " ",
            "\u0000",
            "\u001b[31m",
            "\r",
            "\n\n",
            "\ufeff",
            "\u202e",
            "\ud83d\ude00",
            "\"",
            "\"\"",
            "'",
            "<",
            "]]>",
            "&",
            "&#0;",
            "&#x110000;",
            "&undefined;",
            "<!DOCTYPE a [<!ENTITY b 'c'>]>",
            "<?xml version=\"1.1\"?>",
            "xmi:id",
            "href=\"file:///dev/zero\"",
            "../../",
            "/dev/zero",
            "\\",
            "\\u00",
            "\\uD800",
            "{",
            "}}",
            "[[[[[[[[",
            "null",
            "true",
            ";",
            ",,,,",
            "\t",
            "=1+1",
            "@",
            "-",
            "°C",
            "kW",
            "bar",
            "%",
            "2026-02-30",
            "10000-01-01",
            "0000-00-00");

    private final Random random;

    Mutator(long seed) {
        this.random = new Random(seed);
    }

    /** A damaged copy of one of the samples: one to six changes, sometimes with a piece of another sample. */
    byte[] mutate(List<byte[]> samples) {
        byte[] sample = samples.get(random.nextInt(samples.size()));
        byte[] other = samples.get(random.nextInt(samples.size()));
        if (isZip(sample) && random.nextInt(5) > 0) {
            return mutateEntry(sample);
        }
        return change(sample, other);
    }

    private byte[] change(byte[] sample, byte[] other) {
        byte[] changed = sample;
        int changes = 1 + random.nextInt(6);
        for (int i = 0; i < changes; i++) {
            changed = step(changed, other);
        }
        return changed;
    }

    private byte[] step(byte[] bytes, byte[] other) {
        if (bytes.length == 0) {
            return token();
        }
        int at = random.nextInt(bytes.length);
        int end = Math.min(bytes.length, at + 1 + length());
        return switch (random.nextInt(12)) {
            case 0 -> flip(bytes, at);
            case 1 -> replace(bytes, at, end, new byte[0]);
            case 2 -> replace(bytes, at, at, Arrays.copyOfRange(bytes, at, end));
            case 3 -> replace(bytes, at, at, token());
            case 4 -> replace(bytes, at, end, token());
            case 5, 6, 7 -> word(bytes, at);
            case 8 -> splice(bytes, at, end, other);
            case 9 -> repeated(bytes, at, end);
            case 10 -> random.nextInt(8) == 0 ? Arrays.copyOf(bytes, at) : line(bytes, at);
            default -> encoded(bytes);
        };
    }

    private int length() {
        return random.nextInt(10) == 0 ? random.nextInt(2000) : random.nextInt(12);
    }

    private byte[] token() {
        return TOKENS.get(random.nextInt(TOKENS.size())).getBytes(StandardCharsets.UTF_8);
    }

    private byte[] flip(byte[] bytes, int at) {
        byte[] copy = bytes.clone();
        copy[at] = random.nextBoolean() ? (byte) (copy[at] ^ 1 << random.nextInt(8)) : (byte) random.nextInt(256);
        return copy;
    }

    /** Puts something else in the place of the word or number in which a place lies. */
    private byte[] word(byte[] bytes, int at) {
        int from = at;
        int to = at;
        while (from > 0 && inWord(bytes[from - 1])) {
            from--;
        }
        while (to < bytes.length && inWord(bytes[to])) {
            to++;
        }
        return replace(bytes, from, to, token());
    }

    private static boolean inWord(byte each) {
        return Character.isLetterOrDigit(each) || each == '.' || each == '-' || each < 0;
    }

    private byte[] splice(byte[] bytes, int at, int end, byte[] other) {
        if (other.length == 0) {
            return bytes;
        }
        int from = random.nextInt(other.length);
        return replace(bytes, at, end, Arrays.copyOfRange(other, from, Math.min(other.length, from + 1 + length())));
    }

    private byte[] repeated(byte[] bytes, int at, int end) {
        byte[] piece = Arrays.copyOfRange(bytes, at, end);
        int times = Math.min(1 + random.nextInt(random.nextInt(20) == 0 ? 20_000 : 40), 200_000 / piece.length);
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (int i = 0; i < times; i++) {
            all.writeBytes(piece);
        }
        return replace(bytes, at, at, all.toByteArray());
    }

    /** Drops, doubles or moves a whole line. */
    private byte[] line(byte[] bytes, int at) {
        int from = at;
        int to = at;
        while (from > 0 && bytes[from - 1] != '\n') {
            from--;
        }
        while (to < bytes.length && bytes[to] != '\n') {
            to++;
        }
        to = Math.min(bytes.length, to + 1);
        byte[] line = Arrays.copyOfRange(bytes, from, to);
        return switch (random.nextInt(3)) {
            case 0 -> replace(bytes, from, to, new byte[0]);
            case 1 -> replace(bytes, from, from, line);
            default -> {
                byte[] without = replace(bytes, from, to, new byte[0]);
                yield replace(without, without.length, without.length, line);
            }
        };
    }

    private byte[] encoded(byte[] bytes) {
        if (random.nextInt(10) > 0) {
            return flip(bytes, random.nextInt(bytes.length));
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        return random.nextBoolean()
                ? text.getBytes(StandardCharsets.UTF_16)
                : text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] replace(byte[] bytes, int from, int to, byte[] with) {
        byte[] result = new byte[bytes.length - (to - from) + with.length];
        System.arraycopy(bytes, 0, result, 0, from);
        System.arraycopy(with, 0, result, from, with.length);
        System.arraycopy(bytes, to, result, from + with.length, bytes.length - to);
        return result;
    }

    private static boolean isZip(byte[] bytes) {
        return bytes.length > 4 && bytes[0] == 'P' && bytes[1] == 'K';
    }

    /** Damages one file inside an archive, drops it, or puts another in its place. */
    private byte[] mutateEntry(byte[] archive) {
        try {
            Map<String, byte[]> entries = new LinkedHashMap<>();
            try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
                for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                    entries.put(entry.getName(), zip.readAllBytes());
                }
            }
            List<String> names = new ArrayList<>(entries.keySet());
            List<String> sheets = names.stream()
                    .filter(name -> name.contains("/worksheets/sheet") || name.contains("sharedStrings"))
                    .toList();
            List<String> from = random.nextBoolean() && !sheets.isEmpty() ? sheets : names;
            String name = from.get(random.nextInt(from.size()));
            byte[] content = entries.getOrDefault(name, new byte[0]);
            switch (random.nextInt(12)) {
                case 0 -> entries.remove(name);
                case 1 -> entries.put(name, entries.getOrDefault(names.get(random.nextInt(names.size())), content));
                default -> entries.put(name, change(content, content));
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try (ZipOutputStream zip = new ZipOutputStream(out)) {
                for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                    zip.putNextEntry(new ZipEntry(entry.getKey()));
                    zip.write(entry.getValue());
                    zip.closeEntry();
                }
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}

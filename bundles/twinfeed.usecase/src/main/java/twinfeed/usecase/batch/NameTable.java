// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Locale;

/**
 * Numbers by name, without the names: of each only 128 bits of its SHA-256 are kept, so that a name takes 20 bytes however long it is, and at
 * most 80 with the table's free places. Two names of a list that share those bits would be taken for one; among a million names the chance of
 * that is below 1e-26. A list has at most 2^20 rows, so the table ends at 40 MiB.
 */
final class NameTable {
    private static final int FIRST = 1 << 8;

    private long[] high = new long[FIRST];
    private long[] low = new long[FIRST];
    private int[] numbers = new int[FIRST];
    private int size;

    /**
     * Gives a name its number, unless it has one.
     *
     * @param name the name; capitals and the spaces around it and between its words make no difference
     * @param number its number, more than 0
     * @return the number that it had before; 0 if it had none
     */
    int putIfAbsent(String name, int number) {
        if (number <= 0) {
            throw new IllegalArgumentException("the number " + number + " is not more than 0");
        }
        ByteBuffer digest = ByteBuffer.wrap(digest(name));
        long first = digest.getLong();
        long second = digest.getLong();
        int at = place(first, second);
        if (numbers[at] != 0) {
            return numbers[at];
        }
        high[at] = first;
        low[at] = second;
        numbers[at] = number;
        if (++size > numbers.length / 2) {
            grow();
        }
        return 0;
    }

    /** Where a name stands, or the free place where it would. */
    private int place(long first, long second) {
        int last = numbers.length - 1;
        int at = (int) first & last;
        while (numbers[at] != 0 && (high[at] != first || low[at] != second)) {
            at = at + 1 & last;
        }
        return at;
    }

    private void grow() {
        long[] oldHigh = high;
        long[] oldLow = low;
        int[] oldNumbers = numbers;
        high = new long[oldNumbers.length * 2];
        low = new long[oldNumbers.length * 2];
        numbers = new int[oldNumbers.length * 2];
        for (int i = 0; i < oldNumbers.length; i++) {
            if (oldNumbers[i] != 0) {
                int at = place(oldHigh[i], oldLow[i]);
                high[at] = oldHigh[i];
                low[at] = oldLow[i];
                numbers[at] = oldNumbers[i];
            }
        }
    }

    /** What names of one dwelling have in common: capitals and the number of spaces count for nothing. */
    static String key(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    private static byte[] digest(String name) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(key(name).getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}

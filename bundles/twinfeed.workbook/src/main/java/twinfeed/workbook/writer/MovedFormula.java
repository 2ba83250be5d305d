// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import org.apache.poi.ss.util.CellReference;

/**
 * A formula at its cell, read for the cells of the same sheet to which it refers. Those within some rows of it and in the same or the next
 * column move with it, all others keep their place, and so do cells of other sheets, names and texts.
 */
final class MovedFormula {
    private final StringBuilder relative;
    private final StringBuilder anchored;
    private final int row;
    private final int column;
    private final int length;

    /**
     * Reads a formula as {@link twinfeed.workbook.formula.LiveFormula} writes it: without blanks, cells of the same sheet without dollar signs.
     *
     * @param row number of its row, from 1
     * @param column index of its column, from 0
     * @param near rows up and down that move with it
     */
    MovedFormula(String formula, int row, int column, int near) {
        this.row = row;
        this.column = column;
        this.length = formula.length();
        relative = new StringBuilder(formula.length() + 16);
        anchored = new StringBuilder(formula.length() + 16);
        int at = 0;
        while (at < formula.length()) {
            int end = token(formula, at);
            int digits = digits(formula, at, end);
            if (digits > 0 && isFree(formula, at, end)) {
                cell(formula.substring(at, digits), formula.substring(digits, end), near);
            } else {
                relative.append(formula, at, end);
                anchored.append(formula, at, end);
            }
            at = end;
        }
    }

    /** Number of its row, from 1. */
    int row() {
        return row;
    }

    /** Index of its column, from 0. */
    int column() {
        return column;
    }

    /** How many letters it has. */
    int length() {
        return length;
    }

    /** The formula as it is the same for every cell to which it is moved. */
    String relative() {
        return relative.toString();
    }

    /** The formula with dollar signs at what keeps its place. */
    String anchored() {
        return anchored.toString();
    }

    private void cell(String letters, String digits, int near) {
        int toRow = Integer.parseInt(digits);
        int toColumn = CellReference.convertColStringToIndex(letters);
        boolean rowMoves = Math.abs(toRow - row) <= near;
        boolean columnMoves = rowMoves && Math.abs(toColumn - column) <= 1;
        relative.append(columnMoves ? "{" + (toColumn - column) + "," : "{" + letters + ",")
                .append(rowMoves ? toRow - row + "}" : digits + "}");
        // A row that moves and one that does not may have the same number.
        relative.append(rowMoves ? '~' : '=');
        anchored.append(columnMoves ? "" : "$")
                .append(letters)
                .append(rowMoves ? "" : "$")
                .append(digits);
    }

    /** Where the token ends that begins here: a text, a quoted name, a word with its digits, or one other letter. */
    private static int token(String formula, int start) {
        char first = formula.charAt(start);
        if (first == '"' || first == '\'') {
            int end = formula.indexOf(first, start + 1);
            return end < 0 ? formula.length() : end + 1;
        }
        int end = start;
        while (end < formula.length() && isWord(formula.charAt(end))) {
            end++;
        }
        return Math.max(end, start + 1);
    }

    private static boolean isWord(char letter) {
        return (letter >= 'A' && letter <= 'Z')
                || (letter >= 'a' && letter <= 'z')
                || (letter >= '0' && letter <= '9')
                || letter == '_'
                || letter == '.'
                || letter == '$'
                || letter == '!';
    }

    /** Where the digits of a cell's address begin; 0 if the token is none. */
    private static int digits(String formula, int start, int end) {
        int digits = start;
        while (digits < end && formula.charAt(digits) >= 'A' && formula.charAt(digits) <= 'Z') {
            digits++;
        }
        if (digits == start || digits == end || digits - start > 3 || end - digits > 7) {
            return 0;
        }
        for (int at = digits; at < end; at++) {
            if (formula.charAt(at) < '0' || formula.charAt(at) > '9') {
                return 0;
            }
        }
        return digits;
    }

    /** Whether a word is neither a function nor a part of an address of another sheet. */
    private static boolean isFree(String formula, int start, int end) {
        boolean function = end < formula.length() && formula.charAt(end) == '(';
        boolean quoted = start > 0 && formula.charAt(start - 1) == '\'';
        return !function && !quoted;
    }
}

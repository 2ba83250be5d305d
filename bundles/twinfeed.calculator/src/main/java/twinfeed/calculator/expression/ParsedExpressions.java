// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.expression;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Expressions that were read before: workings of one kind are the same expressions over other values, house after house. Thread-safe. */
final class ParsedExpressions {
    /** More than all kinds of workings hold together; texts that hold figures of a house may be more, and then all are forgotten. */
    private static final int MOST = 4_000;

    private static final Map<String, Expression> KNOWN = new ConcurrentHashMap<>();

    private ParsedExpressions() {}

    /**
     * The tree of a text.
     *
     * @throws IllegalArgumentException if it is not of the grammar
     */
    static Expression of(String text) {
        Expression known = KNOWN.get(text);
        if (known == null) {
            known = new ExpressionParser(text).parse();
            if (KNOWN.size() >= MOST) {
                KNOWN.clear();
            }
            KNOWN.put(text, known);
        }
        return known;
    }
}

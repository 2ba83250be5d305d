// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.concurrent.Executor;

/**
 * Where work is done, each a queue of its own in which one piece comes after the other.
 *
 * @param quick for what is to be seen at once
 * @param thorough for what may take seconds
 * @param display for showing: the user interface's thread
 */
public record Threads(Executor quick, Executor thorough, Executor display) {
    /** Everything at once and in the caller's thread. */
    public static Threads here() {
        return new Threads(Runnable::run, Runnable::run, Runnable::run);
    }
}

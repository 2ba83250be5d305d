// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.concurrent.Executor;

/**
 * Where work is done.
 *
 * @param background for computing, one piece after the other
 * @param display for showing: the user interface's thread
 */
public record Threads(Executor background, Executor display) {
    /** Everything at once and in the caller's thread. */
    public static Threads here() {
        return new Threads(Runnable::run, Runnable::run);
    }
}

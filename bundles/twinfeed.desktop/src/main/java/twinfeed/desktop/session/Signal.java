// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Tells those who asked that something has changed. */
public final class Signal {
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    /** From now on told; the answer stops it. */
    public Runnable listen(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** Tells everybody. */
    public void fire() {
        listeners.forEach(Runnable::run);
    }
}

// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Tells its listeners that something has changed. Listeners are called on the thread that fires; thread-safe. */
public final class ChangeNotifier {
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    /** Adds a listener; the answer removes it again. */
    public Runnable listen(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** Calls all listeners. */
    public void fire() {
        listeners.forEach(Runnable::run);
    }
}

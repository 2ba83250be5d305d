// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;

/**
 * Where a part can be absent, the model has a yes or no beside its reading: {@code hasMainBonding} beside {@code mainBonding}. Yes, no
 * and unset are three things: it is there, there is none, nobody looked.
 */
public final class Presence {
    private Presence() {}

    /** The feature that says whether the part is there at all; absent where the model has none for a reading. */
    public static @Nullable EAttribute of(EAttribute reading) {
        String name = reading.getName();
        EStructuralFeature found = reading.getEContainingClass()
                .getEStructuralFeature("has" + Character.toUpperCase(name.charAt(0)) + name.substring(1));
        return found instanceof EAttribute presence ? presence : null;
    }
}

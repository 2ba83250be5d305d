// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;

/**
 * Where an undo or a redo has changed the model.
 *
 * @param owner the object that holds what was changed; it is in the model afterwards
 * @param path the features from there to the value or list that was changed; over objects that went with it, too
 * @param element the row of the list that was added or moved; null where a value was changed or a row went
 */
public record ModelChange(EObject owner, List<EStructuralFeature> path, @Nullable EObject element) {
    private static final Set<Integer> CHANGES = Set.of(
            Notification.SET,
            Notification.UNSET,
            Notification.ADD,
            Notification.ADD_MANY,
            Notification.REMOVE,
            Notification.REMOVE_MANY,
            Notification.MOVE);

    public ModelChange {
        path = List.copyOf(path);
    }

    /**
     * Makes a change and looks where it is made.
     *
     * @param within an object of the model that the change is made in
     * @param change makes it
     * @param last where it is made of several: whether the last one is meant rather than the first
     */
    static Optional<ModelChange> watch(EObject within, Runnable change, boolean last) {
        Watcher watcher = new Watcher(last);
        EObject root = EcoreUtil.getRootContainer(within);
        root.eAdapters().add(watcher);
        try {
            change.run();
        } finally {
            root.eAdapters().remove(watcher);
        }
        return Optional.ofNullable(watcher.found).map(ModelChange::of);
    }

    private static final class Watcher extends EContentAdapter {
        private final boolean last;
        private @Nullable Notification found;

        Watcher(boolean last) {
            this.last = last;
        }

        @Override
        public void notifyChanged(Notification notification) {
            super.notifyChanged(notification);
            boolean change = CHANGES.contains(notification.getEventType()) && !notification.isTouch();
            if (change && notification.getFeature() instanceof EStructuralFeature && (last || found == null)) {
                found = notification;
            }
        }
    }

    private static ModelChange of(Notification change) {
        EObject owner = (EObject) change.getNotifier();
        EStructuralFeature feature = (EStructuralFeature) change.getFeature();
        Object now = change.getNewValue();
        Object value = now == null ? change.getOldValue() : now;
        if (!(feature instanceof EReference) || !(value instanceof EObject object)) {
            return new ModelChange(owner, List.of(feature), null);
        }
        return feature.isMany()
                ? new ModelChange(owner, List.of(feature), now == null ? null : object)
                : within(owner, feature, object);
    }

    /** An object comes and goes with its first reading, or with the first row of its list. */
    private static ModelChange within(EObject owner, EStructuralFeature feature, EObject object) {
        List<EStructuralFeature> path = new java.util.ArrayList<>(List.of(feature));
        @Nullable EObject holder = object;
        while (holder != null) {
            EObject present = holder;
            EStructuralFeature first = present.eClass().getEAllStructuralFeatures().stream()
                    .filter(present::eIsSet)
                    .findFirst()
                    .orElse(null);
            if (first == null) {
                return new ModelChange(owner, path, null);
            }
            path.add(first);
            Object value = present.eGet(first);
            if (first.isMany()) {
                boolean there = EcoreUtil.isAncestor(owner, present);
                return new ModelChange(
                        owner, path, there && ((List<?>) value).get(0) instanceof EObject element ? element : null);
            }
            holder = value instanceof EObject next ? next : null;
        }
        return new ModelChange(owner, path, null);
    }
}

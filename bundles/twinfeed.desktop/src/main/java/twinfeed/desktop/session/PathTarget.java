// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.List;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;

/**
 * Where a path of the model leads, as far as the objects on it exist, and how a value is set or removed there.
 *
 * @param root where the path begins
 * @param owner the last object on it that is there
 * @param path the whole path
 * @param depth how many steps lead to the owner
 */
record PathTarget(EObject root, EObject owner, List<EStructuralFeature> path, int depth) {

    static PathTarget of(EObject root, List<EStructuralFeature> path) {
        EObject owner = root;
        int depth = 0;
        while (depth < path.size() - 1 && owner.eGet(path.get(depth)) instanceof EObject next) {
            owner = next;
            depth++;
        }
        return new PathTarget(root, owner, path, depth);
    }

    /** Whether every object on the path is there. */
    boolean complete() {
        return depth == path.size() - 1;
    }

    /** The feature of the owner that the path takes next. */
    EStructuralFeature feature() {
        return path.get(depth);
    }

    boolean isSet() {
        return complete() && owner.eIsSet(feature());
    }

    /** Sets the value, together with the objects that lack on the way to it. */
    Command setting(EditingDomain domain, Object value) {
        Object whole = value;
        for (int i = path.size() - 1; i > depth; i--) {
            EClass type = ((EReference) path.get(i - 1)).getEReferenceType();
            EObject holder = type.getEPackage().getEFactoryInstance().create(type);
            put(holder, path.get(i), whole);
            whole = holder;
        }
        return new SetCommand(domain, owner, feature(), whole);
    }

    @SuppressWarnings("unchecked")
    private static void put(EObject holder, EStructuralFeature feature, Object value) {
        if (feature.isMany()) {
            ((List<Object>) holder.eGet(feature)).add(value);
        } else {
            holder.eSet(feature, value);
        }
    }

    /**
     * Takes the value away, and with it the outermost object that holds nothing else: an object without any reading would say
     * that something was looked at which nobody looked at.
     */
    Command removal(EditingDomain domain) {
        EObject holder = owner;
        int step = depth;
        while (step > 0 && holdsOnly(holder, path.get(step))) {
            holder = holder.eContainer();
            step--;
        }
        return new SetCommand(domain, holder, path.get(step), SetCommand.UNSET_VALUE);
    }

    private static boolean holdsOnly(EObject holder, EStructuralFeature feature) {
        return holder.eClass().getEAllStructuralFeatures().stream()
                .allMatch(each -> each == feature || !holder.eIsSet(each));
    }
}

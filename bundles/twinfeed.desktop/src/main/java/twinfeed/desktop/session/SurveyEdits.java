// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.List;
import java.util.Optional;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.MoveCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.emf.edit.provider.ReflectiveItemProviderAdapterFactory;
import org.jspecify.annotations.Nullable;

/** Edits of one survey: each is one command that can be undone. Belongs to the user interface's thread. */
public final class SurveyEdits {
    private final BasicCommandStack stack = new BasicCommandStack();
    private final EditingDomain domain =
            new AdapterFactoryEditingDomain(new ReflectiveItemProviderAdapterFactory(), stack);
    private final ChangeNotifier changed = new ChangeNotifier();

    private boolean unsaved;

    /**
     * Edits that nobody has made yet.
     *
     * @param unsaved whether the survey already differs from its file
     */
    public SurveyEdits(boolean unsaved) {
        this.unsaved = unsaved;
        stack.addCommandStackListener(event -> changed.fire());
    }

    /** Fires after every edit, undo and redo. */
    public ChangeNotifier changed() {
        return changed;
    }

    /**
     * Sets a reading, or removes it; objects on the way that are not there yet are made by the same command, and those that
     * would be left empty go with it. Where a pipe is renamed, the gauge and the taps that name it follow.
     *
     * @param root where the path begins
     * @param path features from there to the reading, the last of which is an attribute
     * @param value the new value; null takes the reading away
     */
    public void set(EObject root, List<EStructuralFeature> path, @Nullable Object value) {
        PathTarget place = PathTarget.of(root, path);
        Object present = place.isSet() ? place.owner().eGet(place.feature()) : null;
        if (place.complete() ? !java.util.Objects.equals(present, value) : value != null) {
            Command edit = value == null ? place.removal(domain) : place.setting(domain, value);
            execute(
                    place.complete()
                            ? RenamedPipe.withReferences(domain, place.owner(), place.feature(), value, edit)
                            : edit);
        }
    }

    /** Sets all the values of an attribute that has several. */
    public void setAll(EObject owner, EStructuralFeature feature, List<?> values) {
        if (!values.equals(owner.eGet(feature))) {
            execute(new SetCommand(domain, owner, feature, values));
        }
    }

    /** Adds an element at the end of a list; objects on the way that are not there yet are made by the same command. */
    public void add(EObject root, List<EStructuralFeature> path, EObject element) {
        PathTarget place = PathTarget.of(root, path);
        execute(
                place.complete()
                        ? new AddCommand(domain, place.owner(), place.feature(), element)
                        : place.setting(domain, element));
    }

    /**
     * Adds an element to a list, or puts it in the place of another one.
     *
     * @param replaced what it replaces; null adds it at the end
     */
    public void put(EObject owner, EReference list, EObject element, @Nullable EObject replaced) {
        int index = replaced == null ? -1 : ((List<?>) owner.eGet(list)).indexOf(replaced);
        execute(
                index < 0
                        ? new AddCommand(domain, owner, list, element)
                        : new SetCommand(domain, owner, list, element, index));
    }

    /** Gives an object everything that another one of its class holds, in one step; the other one is empty afterwards. */
    public void replace(EObject owner, EObject by) {
        CompoundCommand all = new CompoundCommand();
        for (EStructuralFeature feature : owner.eClass().getEAllStructuralFeatures()) {
            Object value = feature.isMany()
                    ? List.copyOf((List<?>) by.eGet(feature))
                    : by.eIsSet(feature) ? by.eGet(feature) : SetCommand.UNSET_VALUE;
            if (!feature.isDerived() && feature.isChangeable()) {
                all.append(new SetCommand(domain, owner, feature, value));
            }
        }
        execute(all);
    }

    /**
     * Makes a change that cannot be undone. No edit before it can be undone from then on either: taking one back could take
     * the object away that holds the record.
     *
     * @param change the change; what it throws is thrown, and it must have changed nothing then
     */
    public void keep(Runnable change) {
        change.run();
        unsaved = true;
        stack.flush();
    }

    /** Takes an element out of its list. */
    public void remove(EObject element) {
        EObject owner = element.eContainer();
        execute(new RemoveCommand(domain, owner, element.eContainmentFeature(), element));
    }

    /** Moves an element within its list. */
    public void move(EObject element, int to) {
        EReference list = element.eContainmentFeature();
        List<?> all = (List<?>) element.eContainer().eGet(list);
        if (to >= 0 && to < all.size()) {
            execute(new MoveCommand(domain, element.eContainer(), list, element, to));
        }
    }

    private void execute(Command command) {
        stack.execute(command);
    }

    /** Whether there is something to undo. */
    public boolean canUndo() {
        return stack.canUndo();
    }

    /** Whether there is something to do again. */
    public boolean canRedo() {
        return stack.canRedo();
    }

    /** Takes back the last edit, if there is one; the answer is what has changed. Of several changes that is the one from which the others follow. */
    public Optional<ModelChange> undo() {
        return canUndo() ? watch(stack.getUndoCommand(), stack::undo, true) : Optional.empty();
    }

    /** Makes the last edit that was taken back again, if there is one; the answer is what has changed, likewise. */
    public Optional<ModelChange> redo() {
        return canRedo() ? watch(stack.getRedoCommand(), stack::redo, false) : Optional.empty();
    }

    /** What follows from a change is made after it, and so taken back before it. */
    private static Optional<ModelChange> watch(Command command, Runnable change, boolean last) {
        Optional<EObject> within = command.getAffectedObjects().stream()
                .filter(EObject.class::isInstance)
                .map(EObject.class::cast)
                .findFirst();
        if (within.isEmpty()) {
            change.run();
            return Optional.empty();
        }
        return ModelChange.watch(within.get(), change, last);
    }

    /** Whether the survey differs from what was last saved. */
    public boolean dirty() {
        return unsaved || stack.isSaveNeeded();
    }

    /** The survey was saved as it is. */
    public void saved() {
        unsaved = false;
        stack.saveIsDone();
    }
}

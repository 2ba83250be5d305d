// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.Objects;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.jspecify.annotations.Nullable;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.model.survey.WaterFeed;

/** A pipe of the run to the unit that gets another name. The gauge and the taps say by its name where they are, so they get the new one with it. */
final class RenamedPipe {
    private final EditingDomain domain;
    private final CompoundCommand all = new CompoundCommand();

    private RenamedPipe(EditingDomain domain, Command rename) {
        this.domain = domain;
        all.append(rename);
    }

    /**
     * The command with what follows from it; the command itself where it renames no pipe that can be told from the others.
     *
     * @param rename sets the attribute of the owner to the value
     */
    static Command withReferences(
            EditingDomain domain, EObject owner, EStructuralFeature feature, @Nullable Object value, Command rename) {
        if (feature != SurveyPackage.Literals.PIPE_SEGMENT__NAME
                || !(owner instanceof PipeSegment pipe)
                || !(owner.eContainer() instanceof WaterFeed water)
                || !(value instanceof String name)) {
            return rename;
        }
        String old = pipe.getName();
        boolean alone = water.getSegments().stream()
                        .filter(each -> Objects.equals(old, each.getName()))
                        .count()
                == 1;
        return old == null || !alone ? rename : new RenamedPipe(domain, rename).in(water, old, name);
    }

    private Command in(WaterFeed water, String old, String name) {
        if (water.getTest() != null) {
            follow(water.getTest(), SurveyPackage.Literals.WATER_TEST__GAUGE_AFTER, old, name);
        }
        for (DrawOff tap : water.getDrawOffs()) {
            follow(tap, SurveyPackage.Literals.DRAW_OFF__TEE_AFTER, old, name);
        }
        return all;
    }

    private void follow(EObject owner, EAttribute place, String old, String name) {
        if (old.equals(owner.eGet(place))) {
            all.append(new SetCommand(domain, owner, place, name));
        }
    }
}

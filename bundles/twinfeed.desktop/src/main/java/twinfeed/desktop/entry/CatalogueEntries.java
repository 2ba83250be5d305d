// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.text.Words;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.CataloguePackage.Literals;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.check.CatalogueCheck;
import twinfeed.model.check.ModelPath;
import twinfeed.model.check.Problem;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.io.InputException;

/** A catalogue of heaters that is edited heater by heater. */
final class CatalogueEntries extends EntryList {
    private final JobServices services;
    private final Catalogue catalogue;
    private final List<EntryField> fields;

    /** An opened catalogue. */
    CatalogueEntries(Path file, FileFingerprint mark, Catalogue catalogue, JobServices services, Words words) {
        super(file, mark, words);
        this.services = services;
        this.catalogue = catalogue;
        List<EntryField> made = new ArrayList<>();
        for (EStructuralFeature feature : Literals.HEATER.getEStructuralFeatures()) {
            if (feature instanceof EAttribute attribute) {
                made.add(new AttributeField(attribute, words, List.of()));
            } else if (feature == Literals.HEATER__ELEMENTS) {
                made.add(new ElementsField(words));
            }
        }
        this.fields = List.copyOf(made);
    }

    @Override
    EObject root() {
        return catalogue;
    }

    @Override
    EReference reference() {
        return Literals.CATALOGUE__HEATERS;
    }

    @Override
    List<EntryField> fields() {
        return fields;
    }

    @Override
    List<EntryField> headFields() {
        return Stream.of(Literals.CATALOGUE__TITLE, Literals.CATALOGUE__DATE, Literals.CATALOGUE__NOTE)
                .map(attribute -> (EntryField) new AttributeField(attribute, words(), List.of()))
                .toList();
    }

    @Override
    List<String> columns() {
        return Stream.of(
                        Literals.HEATER__ID,
                        Literals.HEATER__TITLE,
                        Literals.HEATER__POWER,
                        Literals.HEATER__VOLTAGE,
                        Literals.HEATER__MINIMUM_RUNNING_PRESSURE)
                .map(EAttribute::getName)
                .toList();
    }

    @Override
    List<String> numbers() {
        return List.of();
    }

    @Override
    EObject create(String name) {
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId(name);
        heater.setTitle(name);
        return heater;
    }

    @Override
    String nameField() {
        return Literals.HEATER__ID.getName();
    }

    @Override
    void outOfDate(EObject entry) {
        edits().set(entry, List.of(Literals.HEATER__WITHDRAWN_ON), isOutOfDate(entry) ? null : services.today());
    }

    @Override
    boolean isOutOfDate(EObject entry) {
        return ((Heater) entry).getWithdrawnOn() != null;
    }

    @Override
    List<EntryRemark> remarks(EObject copy) {
        Catalogue checked = (Catalogue) copy;
        List<EntryRemark> remarks = new ArrayList<>();
        for (Problem problem : CatalogueCheck.of(checked)) {
            int entry = -1;
            String field = problem.path();
            for (int i = 0; i < checked.getHeaters().size(); i++) {
                String path = ModelPath.of(checked.getHeaters().get(i));
                if (problem.path().equals(path) || problem.path().startsWith(path + ".")) {
                    entry = i;
                    field = problem.path()
                            .substring(path.length())
                            .replaceFirst("^\\.", "")
                            .replaceFirst("[.\\[].*", "");
                }
            }
            remarks.add(new EntryRemark(entry, field, problem.isError(), problem.wrong() + "; " + problem.right()));
        }
        return remarks;
    }

    @Override
    List<String> lacking(EObject copy) {
        return List.of();
    }

    @Override
    void write(EObject copy, Path target) {
        List<Problem> wrong = CatalogueCheck.of((Catalogue) copy).stream()
                .filter(Problem::isError)
                .toList();
        if (!wrong.isEmpty()) {
            throw new InputException(
                    wrong.stream().map(problem -> problem.in(target.toString())).toList());
        }
        CatalogueFile.save((Catalogue) copy, target);
    }
}

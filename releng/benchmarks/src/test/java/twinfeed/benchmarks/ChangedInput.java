// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.units.Quantity;
import twinfeed.usecase.OpenedJob;

/** A reading of a survey, or a datum of its first candidate, that is changed: by a share of what was read, or in degrees. */
enum ChangedInput {
    SUPPLY_VOLTAGE("electricity.supplyVoltage", 0.99),
    CABLE_LENGTH("electricity.circuit.segments.length", 1.3),
    ISOLATOR_RATING("electricity.circuit.isolator.rating", 1.02),
    DEVICE_RATING("electricity.circuit.device.rating", 1.02),
    SERVICE_FUSE("electricity.serviceFuse", 0.98),
    LOAD("electricity.loads.current", 1.04),
    EXTERNAL_LOOP("electricity.externalLoop", 1.05),
    STATIC_PRESSURE("water.test.staticPressure", 1.01),
    RUNNING_PRESSURE("water.test.runningPressure", 0.98),
    PIPE_LENGTH("water.segments.length", 1.05),
    TAP_FLOW("water.drawOffs.flow", 0.98),
    WINTER_INTAKE("winterIntake", 1.02),
    TARGET("targetOutlet", 0.99),
    HEATER_POWER("heater.power", 1.01);

    private static final String HEATER = "heater.";

    private final String path;
    private final double factor;

    ChangedInput(String path, double factor) {
        this.path = path;
        this.factor = factor;
    }

    /** The number as it is typed into the cell. */
    double typed(double was) {
        return was * factor;
    }

    /** Whether the survey has the reading. */
    boolean in(OpenedJob job) {
        EObject owner = owner(job);
        return owner != null && owner.eIsSet(feature(owner));
    }

    /** Changes the reading in a survey; its tolerance stays. */
    void set(OpenedJob job) {
        EObject owner = owner(job);
        Quantity was = (Quantity) owner.eGet(feature(owner));
        owner.eSet(feature(owner), was.withSi(was.si() * factor));
    }

    private EStructuralFeature feature(EObject owner) {
        return owner.eClass().getEStructuralFeature(path.substring(path.lastIndexOf('.') + 1));
    }

    /** The element that has the reading; of a list the last, which lies nearest to the heater. */
    private EObject owner(OpenedJob job) {
        boolean ofHeater = path.startsWith(HEATER);
        EObject at = ofHeater ? candidate(job) : job.job().getSurvey();
        String[] names = path.split("\\.");
        for (int i = ofHeater ? 1 : 0; i < names.length - 1 && at != null; i++) {
            Object next = at.eGet(at.eClass().getEStructuralFeature(names[i]));
            at = next instanceof List<?> list
                    ? (list.isEmpty() ? null : (EObject) list.get(index(list)))
                    : (EObject) next;
        }
        return at;
    }

    private static Heater candidate(OpenedJob job) {
        String first = job.job().getSurvey().getCandidates().get(0);
        return job.catalogue().getHeaters().stream()
                .filter(heater -> heater.getId().equals(first))
                .findFirst()
                .orElseThrow();
    }

    private static int index(List<?> list) {
        return list.size() - 1;
    }

    /** The name of the cell in the workbook. */
    String cellName(OpenedJob job) {
        if (path.startsWith(HEATER)) {
            return plain("v_heater[" + candidate(job).getId() + "]." + path.substring(HEATER.length()));
        }
        Survey survey = job.job().getSurvey();
        StringBuilder name = new StringBuilder("survey");
        EObject at = survey;
        for (String part : path.split("\\.")) {
            EStructuralFeature feature = at.eClass().getEStructuralFeature(part);
            name.append('.').append(part);
            Object next = at.eGet(feature);
            if (next instanceof List<?> list) {
                at = (EObject) list.get(index(list));
                name.append('[')
                        .append(twinfeed.calculator.Readings.name(at, index(list)))
                        .append(']');
            } else if (next instanceof EObject element) {
                at = element;
            }
        }
        return plain("v_" + name);
    }

    private static String plain(String name) {
        StringBuilder plain = new StringBuilder(name);
        for (int i = 0; i < plain.length(); i++) {
            if (!Character.isLetterOrDigit(plain.charAt(i))) {
                plain.setCharAt(i, '_');
            }
        }
        return plain.toString();
    }
}

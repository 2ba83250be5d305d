// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Random;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.engine.AssessmentResult;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.diagnosis.visit.FaultQuestion;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Earthing;
import twinfeed.model.survey.ElementReading;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.model.survey.WaterSource;
import twinfeed.units.Area;
import twinfeed.units.Concentration;
import twinfeed.units.Current;
import twinfeed.units.Duration;
import twinfeed.units.Length;
import twinfeed.units.Pressure;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;
import twinfeed.units.TemperatureDifference;
import twinfeed.units.text.Texts;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.faults.FaultFindingService;

/**
 * The keys of most messages of a calculator are put together where it runs: check, outcome and variant; kind of work; assumption. Here the
 * houses of the demonstration and random ones are changed by chance until each such message that takes values was said with the values that
 * its caller gives, in English and in German: no placeholder is left, and none of these messages stays unsaid.
 */
class ComposedMessagesTest {
    private static final int HOUSES = Integer.getInteger("twinfeed.messages.houses", 2500);
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{[A-Za-z]\\w*(:~?\\d+)?}");
    private static final Pattern COMPOSED = Pattern.compile("(customer\\.)?(check|remedy)\\..*|assumption\\..*");
    private static final List<Locale> LANGUAGES = List.of(Locale.UK, Locale.GERMAN);

    private static final Runner RUNNER = new Runner(calculators(), (mean, spread, month, southern) -> mean);

    private final Set<String> said = new TreeSet<>();
    private final Set<String> gaps = new TreeSet<>();
    private final List<FindingText> words =
            LANGUAGES.stream().map(locale -> new FindingText(RUNNER, locale)).toList();

    private static List<Calculator> calculators() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return found;
    }

    /** Messages that take values and whose keys are composed, as {@code calculator key}. */
    private static Set<String> wanted() throws IOException {
        Set<String> wanted = new TreeSet<>();
        for (Calculator calculator : calculators()) {
            Properties texts = new Properties();
            String base = calculator.getClass().getSimpleName().replace("Calculator", "");
            try (InputStream in = calculator.getClass().getResourceAsStream(base + ".properties")) {
                texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
            texts.stringPropertyNames().stream()
                    .filter(key -> COMPOSED.matcher(key).matches())
                    .filter(key -> PLACEHOLDER.matcher(texts.getProperty(key)).find())
                    .forEach(key -> wanted.add(calculator.descriptor().id() + " " + key));
        }
        return wanted;
    }

    @Test
    void everyComposedMessageIsSaidWithTheValuesOfItsCaller() throws IOException {
        List<OpenedJob> jobs = new ArrayList<>();
        TwinfeedService service = TwinfeedService.onClassPath();
        try (Stream<Path> files = Files.list(Books.DEMO)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".job"))
                    .sorted()
                    .toList()) {
                jobs.add(service.open(file, null));
            }
        }
        List<String> questions = FaultFindingService.questions(Locale.UK).stream()
                .map(FaultQuestion::key)
                .toList();
        ChangedHouse changes = new ChangedHouse();
        jobs.forEach(job -> {
            changes.learn(job.job().getSurvey());
            changes.learn(job.catalogue());
        });
        for (OpenedJob job : jobs) {
            for (BiConsumer<Survey, Heater> rare :
                    Stream.concat(RARE.stream(), AS_IT_IS.stream()).toList()) {
                for (boolean present : new boolean[] {true, false}) {
                    Survey survey = EcoreUtil.copy(job.job().getSurvey());
                    Heater heater = EcoreUtil.copy(job.catalogue().getHeaters().get(0));
                    heater(survey, heater);
                    rare.accept(survey, heater);
                    say(RUNNER.assess(survey, List.of(new Candidate(heater, present))));
                }
            }
        }
        for (long seed = 0; seed < HOUSES; seed++) {
            Random random = new Random(seed);
            boolean demo = random.nextBoolean();
            OpenedJob job = jobs.get(random.nextInt(jobs.size()));
            RandomHouse house = RandomHouse.of(seed % 200);
            Survey survey = demo ? job.job().getSurvey() : house.survey();
            List<Heater> heaters = job.catalogue().getHeaters();
            Heater heater = random.nextBoolean()
                    ? heaters.get(random.nextInt(heaters.size()))
                    : house.candidate().heater();
            changes.learn(house.survey());
            Survey surveyed = EcoreUtil.copy(survey);
            Heater unit = EcoreUtil.copy(heater);
            heater(surveyed, jobs.get(0).catalogue().getHeaters().get(random.nextInt(2)));
            if (random.nextInt(4) == 0) {
                report(surveyed, questions, random);
            }
            RARE.get(random.nextInt(RARE.size())).accept(surveyed, unit);
            say(RUNNER.assess(
                    changes.change(surveyed, random),
                    List.of(new Candidate(changes.change(unit, random), random.nextInt(3) == 0))));
        }
        assertEquals(Set.of(), gaps);
        Set<String> unsaid = wanted();
        int all = unsaid.size();
        unsaid.removeAll(said);
        System.out.println("composed messages that take values: " + all + ", said: " + (all - unsaid.size()));
        assertEquals(Set.of(), unsaid);
        assertTrue(all > 200, "messages found: " + all);
    }

    /** The use cases give the calculators the data of the unit that is there. */
    private static void heater(Survey survey, Heater heater) {
        if (survey.getUnit() == null) {
            survey.setUnit(SurveyFactory.eINSTANCE.createPresentUnit());
        }
        if (survey.getUnit().getHeater() == null) {
            survey.getUnit().setHeater(EcoreUtil.copy(heater));
        }
    }

    /** Reports that may contradict one another, or say nothing. */
    private static void report(Survey survey, List<String> questions, Random random) {
        survey.getSymptoms().clear();
        boolean silent = random.nextInt(4) == 0;
        for (int i = 0; i < 7; i++) {
            Symptom symptom = SurveyFactory.eINSTANCE.createSymptom();
            symptom.setKey(questions.get(random.nextInt(questions.size())));
            symptom.setAnswer(silent ? FaultAnswer.UNKNOWN : random.nextBoolean() ? FaultAnswer.YES : FaultAnswer.NO);
            survey.getSymptoms().add(symptom);
        }
        if (silent) {
            survey.setFaultFinding(null);
        }
    }

    /** What needs the rest of the house as it is. */
    private static final List<BiConsumer<Survey, Heater>> AS_IT_IS = List.of(
            (survey, heater) -> {
                survey.getElectricity().setProspectiveFault(Current.valueOf("6.5 kA"));
                survey.getElectricity().setAssemblyFaultRating(null);
            },
            (survey, heater) -> {
                survey.getElectricity().setProspectiveFault(Current.valueOf("6.5 kA"));
                survey.getElectricity().setAssemblyFaultRating(Current.valueOf("16 kA"));
            },
            (survey, heater) -> {
                // Too hot by what was asked for, with no tap that could make it hotter.
                survey.getWater().getDrawOffs().clear();
                survey.setTargetOutlet(Temperature.valueOf("46 °C"));
                if (survey.getCustomer() == null) {
                    survey.setCustomer(SurveyFactory.eINSTANCE.createCustomer());
                }
                survey.getCustomer().setVulnerable(true);
            },
            (survey, heater) -> {
                // A fault current that the conductors carry for ever.
                survey.getElectricity().setEarthing(Earthing.TT);
                survey.getElectricity().setElectrode(Resistance.valueOf("60 ohm"));
                survey.getElectricity().getCircuit().setRcd(null);
                survey.getElectricity().getCircuit().setUpstreamRcd(null);
                if (survey.getElectricity().getCircuit().getDevice() != null) {
                    survey.getElectricity().getCircuit().getDevice().setLetThrough(null);
                }
            },
            (survey, heater) -> {
                // Water that needs hardly any heat.
                survey.setTargetOutlet(Temperature.valueOf("25 °C"));
                survey.setAnnualMeanAir(Temperature.valueOf("24.2 °C"));
                survey.setMonthlyAirSpread(TemperatureDifference.valueOf("0.1 K"));
                survey.setClimate(null);
            },
            (survey, heater) -> {
                // Whatever is asked, the answer is no: no part of the list explains that.
                survey.setFaultFinding(null);
                survey.getSymptoms().clear();
                FaultFindingService.questions(Locale.UK).forEach(question -> {
                    Symptom symptom = SurveyFactory.eINSTANCE.createSymptom();
                    symptom.setKey(question.key());
                    symptom.setAnswer(FaultAnswer.NO);
                    survey.getSymptoms().add(symptom);
                });
            },
            (survey, heater) -> {
                survey.getWater().setSource(WaterSource.TANK);
                survey.getWater().getTest().setStaticPressure(null);
            },
            (survey, heater) -> survey.getElectricity()
                    .getCircuit()
                    .getSegments()
                    .forEach(segment -> segment.setLength(Length.valueOf("70 m"))),
            (survey, heater) -> {
                survey.getElectricity().getCircuit().getDevice().setKind("breaker-d");
                survey.getElectricity().getCircuit().setMeasuredLoop(Resistance.valueOf("0.8 ohm"));
            },
            (survey, heater) -> {
                survey.getElectricity().getCircuit().getDevice().setKind("breaker-c");
                survey.getElectricity().getCircuit().setMeasuredLoop(Resistance.valueOf("0.5 ohm"));
            });

    /** What chance brings together too seldom. */
    private static final List<BiConsumer<Survey, Heater>> RARE = List.of(
            (survey, heater) -> {},
            (survey, heater) -> {
                survey.getElectricity().setEarthing(Earthing.TT);
                survey.getElectricity().setElectrode(Resistance.valueOf("4000 ohm"));
            },
            (survey, heater) -> {
                survey.getElectricity().getCircuit().setInsulationResistance(Resistance.valueOf("0.2 Mohm"));
                survey.getElectricity().getCircuit().setUnitDisconnected(true);
            },
            (survey, heater) -> {
                survey.getElectricity().getCircuit().setRcd(null);
                survey.getElectricity().getCircuit().setUpstreamRcd(null);
                survey.getElectricity().getCircuit().setMeasuredLoop(null);
                survey.getElectricity().getCircuit().setMeasuredLine(Resistance.valueOf("1.4 ohm"));
            },
            (survey, heater) -> {
                survey.getElectricity().getCircuit().setRcd(null);
                survey.getElectricity().getCircuit().setUpstreamRcd(null);
                survey.getElectricity().getCircuit().getDevice().setKind("fuse-3036");
                survey.getElectricity().getCircuit().getDevice().setRating(Current.valueOf("45 A"));
                survey.getElectricity().getCircuit().getDevice().setLetThrough(null);
                survey.getElectricity().getCircuit().setMeasuredLoop(Resistance.valueOf("1.1 ohm"));
            },
            (survey, heater) -> {
                survey.getElectricity().getCircuit().getDevice().setKind("fuse-3036");
                survey.getElectricity().getCircuit().getDevice().setRating(Current.valueOf("30 A"));
                survey.getElectricity().getCircuit().getDevice().setLetThrough(null);
                survey.getElectricity().getCircuit().getSegments().get(0).setCpc(Area.valueOf("1 mm²"));
            },
            (survey, heater) -> {
                survey.getElectricity().setEarthing(Earthing.TT);
                survey.getElectricity().setElectrode(Resistance.valueOf("60 ohm"));
            },
            (survey, heater) -> {
                survey.getElectricity().setExternalLoop(Resistance.valueOf("1.6 ohm"));
                survey.getElectricity().getCircuit().setMeasuredLoop(null);
                survey.getElectricity().getCircuit().setMeasuredLine(null);
            },
            (survey, heater) -> {
                survey.getElectricity().getCircuit().setMeasuredLoop(null);
                survey.getElectricity().getCircuit().setMeasuredLine(null);
                survey.getElectricity().getCircuit().getSegments().get(0).setCpc(Area.valueOf("7 mm²"));
            },
            (survey, heater) -> {
                if (survey.getElectricity().getCircuit().getRcd() != null) {
                    survey.getElectricity().getCircuit().getRcd().setTripTime(Duration.valueOf("420 ms"));
                }
            },
            (survey, heater) -> {
                survey.getElectricity().getCircuit().getSegments().forEach(segment -> {
                    segment.setMethod("C");
                    segment.setGrouped(4);
                    segment.setConfidence(Confidence.SEEN);
                });
                survey.getElectricity().getCircuit().getDevice().setRating(Current.valueOf("50 A"));
            },
            (survey, heater) -> {
                survey.getElectricity().getCircuit().getSegments().forEach(segment -> {
                    segment.setLoft(true);
                    segment.setAmbient(null);
                });
                survey.getElectricity().getCircuit().getDevice().setRating(Current.valueOf("50 A"));
            },
            (survey, heater) -> {
                survey.getWater().getTest().setStaticPressure(Pressure.valueOf("0.9 bar"));
                survey.getWater().getTest().setRunningPressure(Pressure.valueOf("0.3 bar"));
                survey.getWater().getDrawOffs().clear();
            },
            (survey, heater) -> heater.setIngress("IPX1"),
            (survey, heater) -> {
                FaultFinding finding = SurveyFactory.eINSTANCE.createFaultFinding();
                heater.getElements().forEach(element -> {
                    ElementReading reading = SurveyFactory.eINSTANCE.createElementReading();
                    double ohm = Math.pow(heater.getVoltage().si(), 2)
                            / element.getPower().si();
                    reading.setResistance(Resistance.ofSi(ohm));
                    finding.getElements().add(reading);
                });
                survey.setFaultFinding(finding);
            },
            (survey, heater) -> {
                survey.setTargetOutlet(Temperature.valueOf("42.5 °C"));
                if (survey.getCustomer() != null) {
                    survey.getCustomer().setVulnerable(true);
                }
            },
            (survey, heater) -> survey.setTargetOutlet(Temperature.valueOf("42.5 °C")),
            (survey, heater) -> {
                survey.setTargetOutlet(Temperature.valueOf("46 °C"));
                if (survey.getCustomer() != null) {
                    survey.getCustomer().setVulnerable(true);
                }
            },
            (survey, heater) -> {
                survey.getWater().setIntakeReading(Temperature.valueOf("24 °C"));
                heater.setMaximumIntake(Temperature.valueOf("30 °C"));
            },
            (survey, heater) -> {
                Fitting fitting = SurveyFactory.eINSTANCE.createFitting();
                fitting.setKind("scale-inhibitor");
                survey.getWater().getSegments().get(0).getFittings().add(fitting);
                survey.getWater().setHardness(Concentration.valueOf("420 mg/L"));
                heater.setMaximumHardness(Concentration.valueOf("200 mg/L"));
            },
            (survey, heater) -> {
                survey.getWater().setSource(WaterSource.HOT);
                survey.getWater().setHottestFeed(Temperature.valueOf("45 °C"));
                heater.setPreheatedAllowed(true);
                heater.setMaximumIntake(Temperature.valueOf("50 °C"));
            },
            (survey, heater) -> {
                survey.getWater().setSource(WaterSource.HOT);
                survey.getWater().setHottestFeed(Temperature.valueOf("65 °C"));
                heater.setPreheatedAllowed(true);
                heater.setMaximumIntake(Temperature.valueOf("50 °C"));
            },
            (survey, heater) -> {
                survey.getWater().setSource(WaterSource.TANK);
                survey.getWater().getTest().setStaticPressure(Pressure.valueOf("0.5 bar"));
                survey.getWater().getTest().setRunningPressure(Pressure.valueOf("0.2 bar"));
            });

    private void say(AssessmentResult result) {
        result.assumptions().forEach(assumption -> {
            said.add(assumption.calculator() + " assumption." + assumption.key());
            words.forEach(each -> keep(assumption.key(), each.assumption(assumption)));
        });
        result.options().forEach(option -> option.findings().forEach(this::say));
    }

    private void say(Finding finding) {
        String base = "check." + finding.check().key() + "." + Texts.key(finding.outcome());
        String full = finding.variant().isEmpty() ? base : base + "." + finding.variant();
        said.add(finding.calculator() + " " + full);
        said.add(finding.calculator() + " customer." + (known(finding, "customer." + full) ? full : base));
        if (!finding.variant().isEmpty() && !known(finding, full)) {
            said.add(finding.calculator() + " " + base);
        }
        for (FindingText each : words) {
            keep(full, each.sentence(finding));
            String customer = each.forCustomer(finding);
            keep(full, customer == null ? "" : customer);
            for (Remedy remedy : finding.remedies()) {
                keep(remedy.kind(), each.remedy(finding.calculator(), remedy));
            }
        }
        for (Remedy remedy : finding.remedies()) {
            said.add(finding.calculator() + " remedy." + remedy.kind());
            for (Locale locale : LANGUAGES) {
                String key = "customer.remedy." + remedy.kind();
                if (RUNNER.texts(finding.calculator()).has(key)) {
                    said.add(finding.calculator() + " " + key);
                    keep(key, RUNNER.texts(finding.calculator()).format(locale, key, remedy.arguments()));
                }
            }
        }
    }

    private static boolean known(Finding finding, String key) {
        return RUNNER.texts(finding.calculator()).has(key);
    }

    private void keep(String key, String text) {
        if (PLACEHOLDER.matcher(text).find()) {
            gaps.add(key + ": " + text);
        }
    }
}

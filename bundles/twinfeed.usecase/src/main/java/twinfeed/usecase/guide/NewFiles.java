// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.guide;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.eclipse.emf.ecore.EAttribute;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.form.FormPart;
import twinfeed.model.form.SurveyForm;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.InputException;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.rows.CsvCell;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage.Literals;
import twinfeed.pricing.texts.StandingTextFile;
import twinfeed.pricing.texts.StandingTexts;
import twinfeed.units.Power;
import twinfeed.units.Voltage;
import twinfeed.units.text.Texts;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.firm.FirmFolder;
import twinfeed.usecase.refusal.Refusals;

/** Writes a first file of a kind, with the explanations that the kind has room for. No file is ever replaced. */
public final class NewFiles {
    /** Name of the catalogue that a new job names and a new firm's folder has. */
    public static final String HEATERS = "heaters.catalogue";

    private static final Texts TEXTS = new Texts(NewFiles.class, "Guide");

    /** Set in the office, or of a part that only some houses have. */
    private static final Set<Object> NOT_IN_LISTS =
            Set.of(Literals.PRESENT_UNIT__HEATER, Literals.SURVEY__FAULT_FINDING, Literals.CIRCUIT__UPSTREAM_RCD);

    private final FieldText fields;
    private final LocalDate today;

    /**
     * With the calculators whose words a file may hold.
     *
     * @param today the date of a new catalogue and of new prices
     */
    public NewFiles(TwinfeedService service, LocalDate today) {
        this.fields = new FieldText(service.calculators(), Locale.ROOT);
        this.today = today;
    }

    /**
     * Writes it.
     *
     * @param out the file, or the folder of a firm
     * @return what was written
     * @throws InputException if something is there already, the name does not suit the kind, or it cannot be written
     */
    public List<Path> write(FileKind kind, Path out) {
        return switch (kind) {
            case JOB -> {
                free(out, JobFile.ENDING);
                JobFile.save(job(), out);
                yield List.of(out);
            }
            case CATALOGUE -> {
                free(out, CatalogueFile.ENDING);
                CatalogueFile.save(catalogue(), out);
                yield List.of(out);
            }
            case PRICE_BOOK -> text(out, ".csv", priceBook());
            case DWELLINGS -> text(out, ".csv", dwellings());
            case FIRM -> firm(out);
            default -> throw new IllegalArgumentException(kind + " is not begun by hand");
        };
    }

    private static void free(Path out, String ending) {
        if (!out.toString().endsWith(ending)) {
            throw new InputException(Refusals.ofFile(out, "new.ending", ending));
        }
        if (Files.exists(out)) {
            throw new InputException(Refusals.ofFile(out, "new.exists"));
        }
    }

    private static List<Path> text(Path out, String ending, String text) {
        free(out, ending);
        AtomicFile.write(out, text.getBytes(StandardCharsets.UTF_8));
        return List.of(out);
    }

    private static Job job() {
        Job job = JobFile.create();
        job.setCatalogue(HEATERS);
        job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        return job;
    }

    private Catalogue catalogue() {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        catalogue.setTitle(say("catalogue.title"));
        catalogue.setDate(today);
        catalogue.setNote(say("catalogue.note"));
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId("example");
        heater.setTitle(say("catalogue.heater"));
        heater.setPower(Power.valueOf("8.5 kW"));
        heater.setVoltage(Voltage.valueOf("240 V"));
        catalogue.getHeaters().add(heater);
        return catalogue;
    }

    private String priceBook() {
        return say("new.prices").replace("{today}", today.toString()) + "\n";
    }

    /** The names of the columns, then three remarks: what each means, in which unit or words, and an example; then a first dwelling. */
    private String dwellings() {
        List<String> names = new ArrayList<>(List.of("dwelling"));
        List<String> meanings = new ArrayList<>(List.of("# " + say("row.meaning")));
        List<String> units = new ArrayList<>(List.of("# " + say("row.unit")));
        List<String> examples = new ArrayList<>(List.of("# " + say("row.example")));
        names.add(FileGuide.SYMPTOMS);
        meanings.add(say("symptoms"));
        units.add(fields.unit(Literals.SYMPTOM__KEY));
        examples.add(fields.example(Literals.SYMPTOM__KEY));
        for (FormPart part : columns()) {
            for (EAttribute attribute : part.attributes()) {
                names.add(FileGuide.column(part) + attribute.getName());
                meanings.add(fields.meaning(attribute));
                units.add(fields.unit(attribute));
                examples.add(fields.example(attribute));
            }
        }
        return row(names) + row(meanings) + row(units) + row(examples) + row(List.of(say("row.first")));
    }

    private static List<FormPart> columns() {
        return SurveyForm.pages().stream()
                .flatMap(page -> page.parts().stream())
                .filter(part -> !part.table() && !part.path().isEmpty())
                .filter(part -> part.path().stream().noneMatch(NOT_IN_LISTS::contains))
                .toList();
    }

    private static String row(List<String> cells) {
        List<String> quoted = cells.stream()
                .map(CsvCell::safe)
                .map(cell -> cell.matches("(?s).*[,\";\\n].*") ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell)
                .toList();
        return String.join(",", quoted) + "\n";
    }

    private List<Path> firm(Path folder) {
        if (Files.exists(folder)) {
            throw new InputException(Refusals.ofFile(folder, "new.folder"));
        }
        StringBuilder firm = new StringBuilder();
        for (String key : FirmFile.keys()) {
            firm.append("# ").append(say("firm." + key)).append('\n');
            firm.append(key.equals("name") ? "name=" + say("firm.example") : "#" + key + "=")
                    .append('\n');
        }
        StringBuilder texts = new StringBuilder("# ").append(say("texts.head")).append('\n');
        StandingTexts.shipped(Locale.ROOT)
                .forEach((key, value) ->
                        texts.append('#').append(key).append('=').append(value).append('\n'));
        new FirmFolder(folder).make();
        List<Path> written = new ArrayList<>();
        written.addAll(text(folder.resolve(FirmFile.NAME), ".properties", firm.toString()));
        written.addAll(text(folder.resolve(StandingTextFile.NAME), ".properties", texts.toString()));
        written.addAll(write(FileKind.PRICE_BOOK, folder.resolve("prices.csv")));
        written.addAll(write(FileKind.CATALOGUE, folder.resolve(HEATERS)));
        return written;
    }

    private static String say(String key) {
        return TEXTS.get(Locale.ROOT, key);
    }
}

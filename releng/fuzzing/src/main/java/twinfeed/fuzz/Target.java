// SPDX-License-Identifier: EPL-2.0
package twinfeed.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.cli.Verbs;
import twinfeed.model.job.Job;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PricebookFactory;
import twinfeed.pricing.texts.StandingTextFile;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.batch.BatchTask;
import twinfeed.usecase.batch.BatchWriting;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.QuotingService;

/** Reads a file of one kind as the program does, in a folder of its own that holds the demonstration's files. */
final class Target {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    /** One in so many accepted jobs and catalogues is also calculated, with all its heaters. */
    private static final int CALCULATED = 20;

    /** One in so many lists is judged: its dwellings take a hundred times as long as reading it. */
    private static final int JUDGED = 100;

    /** Rows of the demonstration's list. */
    private static final int ROWS = 8;

    private static final String WHOLE = "alder-beck.job";

    private final TwinfeedService service = TwinfeedService.onClassPath();
    private final Kind kind;
    private final Path folder;
    private final Path input;
    private final OpenedJob template;
    private int accepted;
    private int lists;

    /**
     * A target.
     *
     * @param kind of its files
     * @param demo the demonstration's files
     * @param folder an empty folder, which it fills
     */
    Target(Kind kind, Path demo, Path folder) throws IOException {
        this.kind = kind;
        this.folder = folder;
        try (Stream<Path> files = Files.list(demo)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        }
        this.input = kind == Kind.QUOTE
                ? folder.resolve("office").resolve(kind.file())
                : kind == Kind.FIRM || kind == Kind.TEXTS
                        ? Files.createDirectory(folder.resolve("firm")).resolve(kind.file())
                        : folder.resolve(kind.file());
        this.template = service.open(folder.resolve(WHOLE), null);
        if (kind == Kind.FIRM) {
            Files.copy(demo.resolve("netherquill.png"), input.resolveSibling("netherquill.png"));
        }
    }

    /** How many inputs were taken, of all that were read. */
    int accepted() {
        return accepted;
    }

    /** Well-formed files of the kind. */
    List<byte[]> samples() throws IOException {
        return switch (kind) {
            case JOB -> ending(".job");
            case CATALOGUE -> ending(".catalogue");
            case BOOK -> List.of(Files.readAllBytes(folder.resolve("prices.csv")));
            case BOOK_XLSX -> List.of(workbook(folder.resolve("prices.csv")));
            case DWELLINGS -> List.of(Files.readAllBytes(folder.resolve("dwellings.csv")));
            case DWELLINGS_XLSX -> List.of(workbook(folder.resolve("dwellings.csv")));
            case FORM -> List.of(form("en"), form("de"));
            case FIRM -> List.of(Files.readAllBytes(folder.resolve("firm.properties")));
            case TEXTS ->
                List.of(
                        Files.readAllBytes(folder.resolve("standing-texts.properties")),
                        Files.readAllBytes(folder.resolve("standing-texts_de.properties")));
            case QUOTE -> quotes();
        };
    }

    private List<byte[]> ending(String ending) throws IOException {
        List<byte[]> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(each -> each.toString().endsWith(ending))
                    .sorted()
                    .toList()) {
                found.add(Files.readAllBytes(file));
            }
        }
        return found;
    }

    /** A list as a workbook: the same cells, numbers as numbers. */
    private static byte[] workbook(Path csv) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            XSSFSheet sheet = book.createSheet("list");
            int number = 0;
            for (String line : Files.readAllLines(csv)) {
                Row row = sheet.createRow(number++);
                int column = 0;
                for (String cell : line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)) {
                    String text = cell.replace("\"", "");
                    if (text.matches("\\d+(\\.\\d+)?")) {
                        row.createCell(column++).setCellValue(Double.parseDouble(text));
                    } else {
                        row.createCell(column++).setCellValue(text);
                    }
                }
            }
            book.write(out);
            return out.toByteArray();
        }
    }

    private List<byte[]> quotes() throws IOException {
        Path office = Files.createDirectories(folder.resolve("office"));
        PriceBook book = service.book(folder.resolve("prices.csv"));
        AssessedJob assessed = service.judge(template, book, null, Locale.UK);
        IssuedQuotes.issue(
                assessed,
                QuotingService.draft(assessed, book, DAY, FirmFile.load(folder.resolve("firm.properties")), Locale.UK),
                book,
                office);
        List<byte[]> found = new ArrayList<>();
        for (Path file : IssuedQuotes.in(office)) {
            found.add(Files.readAllBytes(file));
        }
        return found;
    }

    /** Reads an input and gives what was said of it; throws what the program throws. */
    String read(byte[] content) throws IOException {
        Files.createDirectories(input.resolveSibling(""));
        Files.write(input, content);
        switch (kind) {
            case JOB -> looked(service.open(input, null));
            case CATALOGUE -> looked(service.open(folder.resolve(WHOLE), input));
            case BOOK, BOOK_XLSX -> {
                service.bookReport(input, null);
                service.book(input);
            }
            case DWELLINGS, DWELLINGS_XLSX -> {
                if (lists++ % JUDGED == 0) {
                    return batch();
                }
                readRow(2 + lists % ROWS);
            }
            case FORM -> {
                return filledIn();
            }
            case FIRM -> FirmFile.load(input);
            case TEXTS -> StandingTextFile.load(input, Locale.UK);
            case QUOTE -> IssuedQuotes.open(input);
        }
        accepted++;
        return "";
    }

    /** What was accepted is calculated too, now and then. */
    private void looked(OpenedJob opened) {
        if (accepted % CALCULATED == 0) {
            service.quickAssess(opened, Locale.UK);
        }
    }

    /** A survey's form with what the demonstration knows in it. */
    private byte[] form(String language) throws IOException {
        Path form = folder.resolve("blank.xlsx");
        String said = run(
                "form", folder.resolve("alder-beck.job").toString(), "--out", form.toString(), "--language", language);
        if (!said.isEmpty()) {
            throw new IllegalStateException(said);
        }
        return Files.readAllBytes(form);
    }

    private String filledIn() throws IOException {
        Path job = folder.resolve("filled-in.job");
        String said = run("read", input.toString(), "--out", job.toString(), "--catalogue", "heaters.catalogue");
        if (Files.deleteIfExists(job)) {
            accepted++;
        }
        return said;
    }

    /** Reads a list to its end and checks the survey of one row of it. */
    private void readRow(int row) {
        BatchTask task =
                new BatchTask(template, PricebookFactory.eINSTANCE.createPriceBook(), FirmFile.none(), DAY, Locale.UK);
        Job job = EcoreUtil.copy(template.job());
        job.setSurvey(new BatchWriting(service, task).survey(input, row));
        service.checked(template, job);
    }

    private String batch() throws IOException {
        Path result = folder.resolve("result.xlsx");
        String said = run(
                "batch",
                input.toString(),
                TEMPLATE,
                folder.resolve(WHOLE).toString(),
                "--book",
                folder.resolve("prices.csv").toString(),
                "--out",
                result.toString());
        if (Files.deleteIfExists(result)) {
            accepted++;
        }
        return said;
    }

    /** Today's name of the option. */
    private static final String TEMPLATE = "--template";

    /** What a verb says on standard error. */
    private String run(String... words) throws IOException {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        try (PrintStream out = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
                PrintStream messages = new PrintStream(err, true, StandardCharsets.UTF_8)) {
            int status = new Verbs(service, DAY, out, messages).run(words);
            String said = err.toString(StandardCharsets.UTF_8);
            if (status > 2) {
                throw new IllegalStateException("status " + status + ": " + said);
            }
            try (Stream<Path> files = Files.list(folder)) {
                List<String> parts = files.map(file -> file.getFileName().toString())
                        .filter(name -> name.contains(".part") || name.endsWith(".tmp"))
                        .toList();
                if (!parts.isEmpty()) {
                    throw new IllegalStateException("left behind: " + parts);
                }
            }
            return status == 0 ? "" : said;
        }
    }
}

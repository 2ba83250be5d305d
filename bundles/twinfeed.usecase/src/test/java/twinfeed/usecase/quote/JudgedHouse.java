// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.Demo;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;

/** A house of the demonstration that was judged once for all tests, with a photograph: nobody changes it. */
final class JudgedHouse {
    static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    static final String PHOTO = "alder-beck-loft.jpg";
    static final TwinfeedService SERVICE = TwinfeedService.onClassPath();
    static final PriceBook BOOK = SERVICE.book(Demo.FOLDER.resolve("prices.csv"));
    static final AssessedJob JUDGED = judged();

    private JudgedHouse() {}

    private static AssessedJob judged() {
        try {
            Path folder = Files.createTempDirectory("twinfeed-house");
            for (String name : new String[] {"heaters.catalogue", PHOTO}) {
                Files.copy(Demo.FOLDER.resolve(name), folder.resolve(name));
                folder.resolve(name).toFile().deleteOnExit();
            }
            String job = Files.readString(Demo.FOLDER.resolve("rowan-brook.job"));
            Path file = Files.writeString(
                    folder.resolve("rowan-brook.job"),
                    job.replace("</survey>", "<photos file=\"" + PHOTO + "\" caption=\"Loft\"/></survey>"));
            folder.toFile().deleteOnExit();
            file.toFile().deleteOnExit();
            return SERVICE.judge(SERVICE.open(file, null), BOOK, null, Locale.UK);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The draft of its quote. */
    static Quote draft() {
        return QuotingService.draft(JUDGED, BOOK, DAY, FirmFile.none(), Locale.UK);
    }

    /** The price book with another price of one item. */
    static PriceBook dearer(String code, String price) {
        PriceBook book = EcoreUtil.copy(BOOK);
        book.getItems().stream()
                .filter(item -> item.getCode().equals(code))
                .forEach(item -> item.setPrice(new java.math.BigDecimal(price)));
        return book;
    }
}

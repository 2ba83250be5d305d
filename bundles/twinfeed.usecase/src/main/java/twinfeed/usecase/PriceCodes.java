// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.diagnosis.repair.VisitPrices;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.pricing.StandardWork;

/** The price-book codes that quotes and repairs may need, as calculators, pricing and fault finding declare them. */
final class PriceCodes {
    private final Map<String, List<String>> bySubject = new LinkedHashMap<>();

    PriceCodes(List<Calculator> calculators) {
        bySubject.put("", StandardWork.codes());
        for (Calculator calculator : calculators) {
            CalculatorDescriptor declared = calculator.descriptor();
            List<String> codes = declared.remedies().stream()
                    .flatMap(kind -> kind.codes().stream())
                    .distinct()
                    .toList();
            bySubject.put(declared.texts().get(Locale.ROOT, "title"), codes);
        }
    }

    /** What a book lacks of them, each code once; what a repair needs comes last. */
    List<BookReport.Lack> lacking(PriceBook book) {
        Set<String> known = book.getItems().stream().map(PriceItem::getCode).collect(Collectors.toSet());
        List<BookReport.Lack> all = new ArrayList<>();
        bySubject.forEach((subject, codes) -> add(
                all, known, subject.isEmpty() ? BookReport.Need.JOB : BookReport.Need.WORK, subject, codes.stream()));
        add(all, known, BookReport.Need.REPAIR, "", VisitPrices.codes().stream());
        return all;
    }

    private static void add(
            List<BookReport.Lack> all, Set<String> known, BookReport.Need need, String subject, Stream<String> codes) {
        List<String> lacking = codes.filter(known::add).toList();
        if (!lacking.isEmpty()) {
            all.add(new BookReport.Lack(need, subject, lacking));
        }
    }
}

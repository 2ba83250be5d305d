// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

class PagePartsTest {
    private final PageParts parts = new PageParts(Locale.ENGLISH);

    private String customer(@Nullable String name, @Nullable String address) {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        Customer customer = SurveyFactory.eINSTANCE.createCustomer();
        customer.setName(name);
        customer.setAddress(address);
        survey.setCustomer(customer);
        return parts.facts(survey).get(0).text();
    }

    @Test
    void aCustomerIsNamedAsFarAsKnown() {
        assertEquals("A. Customer", customer("A. Customer", null));
        assertEquals("1 Invented Row", customer(null, "1 Invented Row"));
        assertEquals("A. Customer\n1 Invented Row", customer("A. Customer", "1 Invented Row"));
        assertEquals(parts.get("fact.unknown"), customer(null, null));
        assertEquals(parts.get("fact.unknown"), customer(" ", null));
    }

    @Test
    void sectionsWithoutContentAreLeftOut() {
        parts.sentences("customer.call", Tone.PLAIN, List.of());
        parts.table("parts.list", List.of(), List.of(parts.column("", Kind.TICK, 1)), List.of());
        parts.sentences("customer.call", Tone.PLAIN, List.of("Call us."));
        parts.table("parts.list", List.of(), List.of(parts.column("parts.unit", Kind.TEXT, 1)), List.of(List.of("m")));
        JobSheet page = parts.page(
                "A page",
                "A job",
                List.of(),
                new Said("", ""),
                List.of(),
                Firm.of("", "", ""),
                "1",
                LocalDate.of(2026, 9, 1));
        assertEquals(2, page.sections().size());
    }
}

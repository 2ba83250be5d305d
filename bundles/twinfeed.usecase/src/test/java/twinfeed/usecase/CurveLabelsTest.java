// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The months below a curve are those of the reader. */
class CurveLabelsTest {
    private static List<String> months(Locale locale) {
        TwinfeedService service = TwinfeedService.onClassPath();
        Path job = Demo.FOLDER.resolve("alder-beck.job");
        return service.quickAssess(service.open(job, null), locale).record().getOptions().get(0).getFindings().stream()
                .flatMap(finding -> finding.getSeries().stream())
                .filter(series -> series.getLabels().contains("Jan"))
                .map(series -> List.copyOf(series.getLabels()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void monthsAreInTheReadersLanguage() {
        assertEquals(
                List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"),
                months(Locale.UK));
        assertEquals(
                List.of("Jan", "Feb", "Mär", "Apr", "Mai", "Jun", "Jul", "Aug", "Sep", "Okt", "Nov", "Dez"),
                months(Locale.GERMANY));
    }
}

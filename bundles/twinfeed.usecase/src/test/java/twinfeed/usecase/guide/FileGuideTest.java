// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import twinfeed.usecase.TwinfeedService;

/** A page of reference says in another language the same things line by line, under the same names of the file. */
class FileGuideTest {
    private static final String MEANING = "      ";
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();

    @ParameterizedTest
    @EnumSource(FileKind.class)
    void germanExplainsTheSameNamesInItsOwnWords(FileKind kind) {
        List<String> english = new FileGuide(SERVICE, Locale.ROOT).page(kind);
        List<String> german = new FileGuide(SERVICE, Locale.GERMANY).page(kind);
        assertEquals(names(english), names(german));
        List<String> same = IntStream.range(1, english.size())
                .mapToObj(english::get)
                .filter(line -> line.startsWith(MEANING) && !line.startsWith(MEANING + "  ") && german.contains(line))
                .toList();
        assertEquals(List.of(), same, "said in English on the German page");
        assertTrue(!german.get(0).equals(english.get(0)), german.get(0));
    }

    private static List<String> names(List<String> page) {
        return page.stream()
                .filter(line -> line.startsWith("  ") && !line.startsWith(MEANING))
                .map(line -> line.strip().replaceAll("  .*", ""))
                .toList();
    }
}

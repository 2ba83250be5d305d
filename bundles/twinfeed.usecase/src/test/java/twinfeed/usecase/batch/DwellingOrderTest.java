// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The most urgent dwelling comes first, and its whole street with it. */
final class DwellingOrderTest {
    private static List<Object> rows(DwellingOrder order) throws IOException {
        List<Object> rows = new ArrayList<>();
        order.mostUrgentFirst(sheets -> rows.add(sheets.get(0).get(0).get(0)));
        return rows;
    }

    private static List<String> visits(DwellingOrder order) throws IOException {
        List<String> visits = new ArrayList<>();
        order.visits((visit, sheets) ->
                visits.add(visit + ": " + sheets.get(0).get(0).get(0)));
        return visits;
    }

    @Test
    void dangerComesFirstThenAgeThenComplaintsThenTheList() throws IOException {
        try (DwellingOrder order = new DwellingOrder()) {
            order.add(Results.of(2, Urgency.SOUND, 30, 9, ""));
            order.add(Results.of(3, Urgency.OPEN, 5, 1, ""));
            order.add(Results.of(4, Urgency.OPEN, 5, 2, ""));
            order.add(Results.of(5, Urgency.OPEN, 5, 2, ""));
            order.add(Results.of(6, Urgency.OPEN, -1, 3, ""));
            order.add(Results.of(7, Urgency.OPEN, 0, 0, ""));
            order.add(Results.of(8, Urgency.OPEN, 6, 0, ""));
            order.add(Results.of(9, Urgency.SAFETY, -1, 0, ""));
            order.add(Results.of(10, Urgency.OPEN, 600, 0, ""));
            order.add(Results.of(11, Urgency.OPEN, 5, 40, ""));
            assertEquals(List.of(9, 10, 8, 11, 4, 5, 3, 7, 6, 2), rows(order));
        }
    }

    @Test
    void aStreetIsOneVisitAndDwellingsWithoutOneComeLast() throws IOException {
        try (DwellingOrder order = new DwellingOrder()) {
            order.add(Results.of(2, Urgency.SOUND, 3, 0, "Mill Row"));
            order.add(Results.of(3, Urgency.SAFETY, 3, 0, ""));
            order.add(Results.of(4, Urgency.OPEN, 3, 0, "Rowan Lane"));
            order.add(Results.of(5, Urgency.SIGN, 3, 0, "mill  row"));
            order.add(Results.of(6, Urgency.SOUND, 3, 0, "Rowan Lane"));
            assertEquals(List.of("1: 5", "1: 2", "2: 4", "2: 6", "3: 3"), visits(order));
        }
    }

    @Test
    void manyDwellingsKeepTheirOrder() throws IOException {
        try (DwellingOrder order = new DwellingOrder()) {
            for (int row = 2; row < 602; row++) {
                order.add(Results.of(row, row == 600 ? Urgency.SAFETY : Urgency.SOUND, 3, 0, "Street " + row % 300));
            }
            List<Object> rows = rows(order);
            assertEquals(600, rows.size());
            assertEquals(List.of(600, 2, 3), rows.subList(0, 3));
            assertEquals(
                    List.of("1: 600", "1: 300", "2: 2", "2: 302"), visits(order).subList(0, 4));
        }
    }
}

// SPDX-License-Identifier: EPL-2.0
package twinfeed.spark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.SparkSession;
import twinfeed.model.rows.CsvRows;
import twinfeed.model.rows.Row;
import twinfeed.spark.ListJob.SerialRow;

/**
 * The rows of a list of dwellings in their order, from CSV or Parquet. In CSV a row is a line: cells with line breaks in them are for Parquet.
 *
 * @param head the row that names the columns
 * @param rows the rows below it that are no remarks
 */
record ListRows(SerialRow head, JavaRDD<SerialRow> rows) {

    /** Reads a list; its ending tells the kind, {@code .parquet} or CSV. */
    static ListRows of(SparkSession spark, String list, int partitions) {
        ListRows all = list.toLowerCase(Locale.ROOT).endsWith(".parquet")
                ? parquet(spark, list)
                : csv(spark, list, partitions);
        return new ListRows(all.head, all.rows.filter(ListRows::isDwelling));
    }

    private static boolean isDwelling(SerialRow row) {
        Row plain = row.row();
        return !plain.head() && !plain.blank();
    }

    private static ListRows csv(SparkSession spark, String list, int partitions) {
        JavaSparkContext context = JavaSparkContext.fromSparkContext(spark.sparkContext());
        JavaRDD<String> lines = context.textFile(list, partitions);
        List<String> begin = lines.take(100);
        int headAt = IntStream.range(0, begin.size())
                .filter(i -> !begin.get(i).isBlank() && !begin.get(i).startsWith("#"))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        list + ": none of its first lines names the columns; begin it with a row of their names"));
        String headLine = begin.get(headAt);
        SerialRow head = SerialRow.of(parsed(headLine, headAt, headLine));
        JavaRDD<SerialRow> rows = lines.zipWithIndex()
                .filter(line -> line._2 > headAt && !line._1.isBlank())
                .map(line -> SerialRow.of(parsed(headLine, line._2, line._1)));
        return new ListRows(head, rows);
    }

    /** A line under its head, which tells what separates the cells. */
    private static Row parsed(String head, long index, String line) {
        List<Row> rows = new ArrayList<>();
        CsvRows.read("list", head + "\n" + line, 3, rows::add);
        Row last = rows.get(rows.size() - 1);
        return new Row(Math.toIntExact(index + 1), last.cells());
    }

    private static ListRows parquet(SparkSession spark, String list) {
        var table = spark.read().parquet(list);
        SerialRow head = new SerialRow(1, table.columns());
        JavaRDD<SerialRow> rows = table.toJavaRDD().zipWithIndex().map(row -> {
            String[] cells = new String[row._1.length()];
            for (int i = 0; i < cells.length; i++) {
                cells[i] = row._1.isNullAt(i) ? "" : String.valueOf(row._1.get(i));
            }
            return new SerialRow(Math.toIntExact(row._2 + 2), cells);
        });
        return new ListRows(head, rows);
    }
}

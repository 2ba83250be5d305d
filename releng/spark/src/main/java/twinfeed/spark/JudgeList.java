// SPDX-License-Identifier: EPL-2.0
package twinfeed.spark;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.SparkSession;
import scala.Tuple2;
import twinfeed.spark.ListJob.SerialRow;
import twinfeed.usecase.batch.RowJudge;

/**
 * Judges and prices a list of dwellings on Apache Spark. The parts of the result, put one behind the other, are the file that
 * {@code twinfeed batch --out RESULT.csv} writes, byte for byte.
 */
public final class JudgeList {
    private static final String USAGE =
            "usage: JudgeList --list LIST --template JOB --book BOOK --date YYYY-MM-DD --out FOLDER [--language TAG]"
                    + " [--partitions NUMBER]";

    private JudgeList() {}

    /** Runs it on the cluster, or the processors, that spark-submit names. */
    public static void main(String[] arguments) throws IOException {
        Map<String, String> options = options(arguments);
        try (SparkSession spark =
                SparkSession.builder().appName("twinfeed list").getOrCreate()) {
            run(spark, options);
        }
    }

    /** With each option by its name. */
    static void run(SparkSession spark, Map<String, String> options) {
        String list = option(options, "--list");
        int partitions = Integer.parseInt(options.getOrDefault("--partitions", "16"));
        ListRows rows = ListRows.of(spark, list, partitions);
        ListJob job = new ListJob(
                option(options, "--template"),
                option(options, "--book"),
                option(options, "--date"),
                LocalDate.now(ZoneId.systemDefault()).toString(),
                options.getOrDefault("--language", "en-GB"),
                list,
                rows.head());
        lines(spark, job, rows.rows()).saveAsTextFile(option(options, "--out"));
    }

    /** All lines of the result, its head included. */
    private static JavaRDD<String> lines(SparkSession spark, ListJob job, JavaRDD<SerialRow> rows) {
        JavaSparkContext context = JavaSparkContext.fromSparkContext(spark.sparkContext());
        // What is wrong with the list as a whole is said before any machine begins.
        job.judge();
        Broadcast<Map<String, Integer>> twice = context.broadcast(namedTwice(job, rows));
        return rows.mapPartitionsWithIndex((part, each) -> judged(job, twice.value(), part, each), true);
    }

    /** The number of the first row of each dwelling that several rows name; these are few. */
    private static Map<String, Integer> namedTwice(ListJob job, JavaRDD<SerialRow> rows) {
        return new TreeMap<>(rows.mapPartitionsToPair(each -> {
                    RowJudge judge = job.judge();
                    return stream(each)
                            .map(row -> new Tuple2<>(judge.key(row.row()), new int[] {row.number(), 1}))
                            .filter(named -> !named._1.isEmpty())
                            .iterator();
                })
                .reduceByKey((one, other) -> new int[] {Math.min(one[0], other[0]), one[1] + other[1]})
                .filter(named -> named._2[1] > 1)
                .mapValues(named -> named[0])
                .collectAsMap());
    }

    private static Iterator<String> judged(
            ListJob job, Map<String, Integer> twice, int part, Iterator<SerialRow> rows) {
        RowJudge judge = job.judge();
        Stream<String> lines = stream(rows).map(SerialRow::row).map(row -> {
            int first = twice.getOrDefault(judge.key(row), row.number());
            return judge.csv(row, first == row.number() ? 0 : first);
        });
        return (part == 0 ? Stream.concat(Stream.of(RowJudge.csvHead()), lines) : lines).iterator();
    }

    private static <T> Stream<T> stream(Iterator<T> each) {
        Iterable<T> once = () -> each;
        return StreamSupport.stream(once.spliterator(), false);
    }

    private static Map<String, String> options(String... arguments) {
        Map<String, String> options = new LinkedHashMap<>();
        for (int i = 0; i + 1 < arguments.length; i += 2) {
            options.put(arguments[i], arguments[i + 1]);
        }
        if (arguments.length % 2 != 0 || options.keySet().stream().anyMatch(name -> !USAGE.contains(name + " "))) {
            throw new IllegalArgumentException(USAGE);
        }
        return options;
    }

    private static String option(Map<String, String> options, String name) {
        String value = options.get(name);
        if (value == null) {
            throw new IllegalArgumentException(name + " is missing; " + USAGE);
        }
        return value;
    }
}

// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.office;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import twinfeed.model.io.JobFile;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.refusal.Refusals;

/**
 * The jobs and issued quotes of an office.
 *
 * @param jobs the jobs, by file
 * @param quotes the issued quotes, by number and revision
 * @param troubles files that cannot be read, a line each with the reason
 */
public record OfficeFolder(List<OfficeJob> jobs, List<IssuedQuote> quotes, List<String> troubles) {
    /** Jobs are looked for in the folder itself and in folders below it, so deep. */
    private static final int DEPTH = 4;

    /** More than that is no office but somebody's whole disk. */
    private static final int MOST_JOBS = 5000;

    public OfficeFolder {
        jobs = List.copyOf(jobs);
        quotes = List.copyOf(quotes);
        troubles = List.copyOf(troubles);
    }

    /**
     * Reads a folder. Never throws, for one bad file must not hide the others.
     *
     * @param office the office's folder; jobs are looked for in it and below, quotes where they are issued
     * @param elsewhere jobs that are kept elsewhere; one that is not there any more is left out
     */
    public static OfficeFolder read(Path office, Collection<Path> elsewhere) {
        List<String> troubles = new ArrayList<>();
        List<IssuedQuote> quotes = new ArrayList<>();
        try {
            for (Path file : IssuedQuotes.in(office)) {
                try {
                    quotes.add(IssuedQuotes.open(file));
                } catch (RuntimeException unreadable) {
                    troubles.add(reason(file, unreadable));
                }
            }
        } catch (RuntimeException unreadable) {
            troubles.add(reason(office, unreadable));
        }
        SortedSet<Path> files = new TreeSet<>();
        elsewhere.stream()
                .filter(Files::isRegularFile)
                .forEach(file -> files.add(file.toAbsolutePath().normalize()));
        find(office.toAbsolutePath().normalize(), files, troubles);
        List<OfficeJob> jobs = new ArrayList<>();
        for (Path file : files) {
            try {
                jobs.add(OfficeJob.of(file, JobFile.load(file)));
            } catch (RuntimeException unreadable) {
                troubles.add(reason(file, unreadable));
            }
        }
        return new OfficeFolder(jobs, quotes, troubles);
    }

    private static String reason(Path file, RuntimeException unreadable) {
        String message = String.valueOf(unreadable.getMessage());
        return message.contains(String.valueOf(file.getFileName())) ? message : file + ": " + message;
    }

    private static void find(Path office, SortedSet<Path> files, List<String> troubles) {
        if (!Files.isDirectory(office)) {
            return;
        }
        try {
            Files.walkFileTree(
                    office, EnumSet.noneOf(java.nio.file.FileVisitOption.class), DEPTH, new JobFinder(office, files));
        } catch (IOException | UncheckedIOException unreadable) {
            troubles.add(office + ": " + unreadable.getMessage());
        }
        if (files.size() >= MOST_JOBS) {
            troubles.add(office + ": " + Refusals.text("office.jobs", MOST_JOBS));
        }
    }

    /** Looks for jobs, and not into hidden folders; a folder that may not be read is passed over. */
    private static final class JobFinder extends SimpleFileVisitor<Path> {
        private final Path office;
        private final SortedSet<Path> files;

        JobFinder(Path office, SortedSet<Path> files) {
            this.office = office;
            this.files = files;
        }

        @Override
        public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            boolean hidden = String.valueOf(folder.getFileName()).startsWith(".");
            return hidden && !folder.equals(office) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            String name = String.valueOf(file.getFileName());
            if (attributes.isRegularFile() && name.endsWith(JobFile.ENDING) && !name.startsWith(".")) {
                files.add(file);
            }
            return files.size() < MOST_JOBS ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException unreadable) {
            return FileVisitResult.CONTINUE;
        }
    }

    /** The quote that was issued last for a job's customer and dwelling; empty if none was. */
    public java.util.Optional<IssuedQuote> latest(OfficeJob job) {
        return quotes.stream().filter(job::matches).reduce((earlier, later) -> later);
    }

    /** Whether a later revision of a quote is there. */
    public boolean revised(IssuedQuote quote) {
        return quotes.stream()
                .anyMatch(each -> quote.quote().getNumber().equals(each.quote().getNumber())
                        && each.quote().getRevision() > quote.quote().getRevision());
    }
}

// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EObject;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.model.io.InputException;
import twinfeed.model.io.ModelFile;
import twinfeed.model.rows.Row;
import twinfeed.usecase.TwinfeedService;

/**
 * Tells one piece of work on a list from another: a digest of everything that its results depend on, the list, the template, the heaters, the
 * prices, the firm and its wording, the day, the language, the program and its calculators.
 */
final class BatchIdentity {
    private final MessageDigest digest;
    private int rows;

    private BatchIdentity() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /**
     * Of a piece of work; reads the list once.
     *
     * @throws InputException if the list cannot be used
     * @throws IOException if another file cannot be read
     */
    static BatchIdentity of(TwinfeedService service, BatchTask task, Path list) throws IOException {
        BatchIdentity identity = new BatchIdentity();
        new DwellingRows(list).read(identity::row);
        identity.text("journal 2");
        identity.text(TwinfeedService.VERSION);
        for (Calculator calculator : service.calculators()) {
            CalculatorDescriptor descriptor = calculator.descriptor();
            identity.text(descriptor.id() + " " + descriptor.version());
        }
        identity.text(task.date() + " " + task.locale());
        identity.object(task.pattern().job());
        identity.object(task.pattern().catalogue());
        identity.object(task.book());
        identity.text(task.firm().firm().name() + "\n" + task.firm().firm().accent());
        identity.wording(task.firm().folder());
        return identity;
    }

    /** The digest. */
    byte[] bytes() {
        return digest.digest();
    }

    /** How many dwellings the list has rows for: all that are no remarks, but the one that names the columns. */
    int dwellings() {
        return Math.max(0, rows - 1);
    }

    private void row(Row row) {
        rows += row.head() ? 0 : 1;
        text(row.number() + "\n" + String.join("\n", row.cells()));
    }

    private void text(String text) {
        bytes(text.getBytes(StandardCharsets.UTF_8));
    }

    /** With an end, so that no part passes for the beginning of the next. */
    private void bytes(byte[] part) {
        digest.update(part);
        digest.update((byte) 0);
    }

    private void object(EObject object) {
        bytes(ModelFile.of(object.eClass(), EObject.class).bytes("", object));
    }

    /** The firm's own wording may stand in the reasons. */
    private void wording(@Nullable Path folder) throws IOException {
        if (folder == null) {
            return;
        }
        TreeSet<Path> files = new TreeSet<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.properties")) {
            found.forEach(files::add);
        }
        for (Path file : files) {
            text(String.valueOf(file.getFileName())); // which language it is for
            bytes(Files.readAllBytes(file));
        }
    }
}

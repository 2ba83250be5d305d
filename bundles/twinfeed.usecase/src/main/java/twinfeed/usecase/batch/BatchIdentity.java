// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EObject;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.model.io.ModelFile;
import twinfeed.usecase.TwinfeedService;

/**
 * Tells one piece of work on a list from another: a digest of everything that its results depend on, the list, the template, the heaters, the
 * prices, the firm and its wording, the day, the language, the program and its calculators.
 */
final class BatchIdentity {
    private final MessageDigest digest;

    private BatchIdentity() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /**
     * Of a piece of work.
     *
     * @throws IOException if a file cannot be read
     */
    static byte[] of(TwinfeedService service, BatchTask task, Path list) throws IOException {
        BatchIdentity identity = new BatchIdentity();
        identity.text("journal 1");
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
        identity.file(list);
        return identity.digest.digest();
    }

    private void text(String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }

    private void object(EObject object) {
        digest.update(ModelFile.of(object.eClass(), EObject.class).bytes("", object));
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
        for (Path file : List.copyOf(files)) {
            file(file);
        }
    }

    private void file(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                DigestOutputStream out = new DigestOutputStream(java.io.OutputStream.nullOutputStream(), digest)) {
            in.transferTo(out);
        }
    }
}

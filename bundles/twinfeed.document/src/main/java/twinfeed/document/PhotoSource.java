// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;

/** Where the pictures of a survey are read from. */
@FunctionalInterface
public interface PhotoSource {
    /** No pictures. */
    PhotoSource NONE = file -> null;

    /**
     * Opens a picture.
     *
     * @param file its name as the survey has it
     * @return the picture, which the caller closes, or null if there is no such file
     * @throws IOException if it is there and cannot be read
     */
    @Nullable
    InputStream open(String file) throws IOException;
}

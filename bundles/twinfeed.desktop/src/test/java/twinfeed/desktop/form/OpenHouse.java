// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.session.OpenJob;
import twinfeed.desktop.session.Threads;
import twinfeed.model.io.FileFingerprint;
import twinfeed.usecase.TwinfeedService;

/** A demonstration job open in a session that gives its quick answer at once and never the thorough one. */
final class OpenHouse {
    private OpenHouse() {}

    static JobSession alderBeck(Path folder) throws IOException {
        DemoFiles.copyInto(folder);
        Path file = folder.resolve("alder-beck.job");
        TwinfeedService service = DemoFiles.service();
        return new JobSession(
                new OpenJob(service.open(file, null), FileFingerprint.of(file), false),
                new JobServices(service, Clock.systemUTC(), Locale.UK),
                new Threads(Runnable::run, work -> {}, Runnable::run));
    }
}

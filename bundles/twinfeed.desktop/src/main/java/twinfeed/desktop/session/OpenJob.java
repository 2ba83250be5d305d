// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import twinfeed.model.io.FileFingerprint;
import twinfeed.usecase.OpenedJob;

/**
 * A job as it was opened.
 *
 * @param opened the job
 * @param mark what its file held then
 * @param rescued whether it holds changes of an earlier sitting that are not in its file
 */
public record OpenJob(OpenedJob opened, FileFingerprint mark, boolean rescued) {}

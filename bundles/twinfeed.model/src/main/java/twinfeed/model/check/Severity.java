// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

/** How bad a problem is. */
public enum Severity {
    /** It cannot be so; nothing is to be calculated from it. */
    ERROR,
    /** It can be so, and is unusual enough to be looked at again. */
    WARNING
}

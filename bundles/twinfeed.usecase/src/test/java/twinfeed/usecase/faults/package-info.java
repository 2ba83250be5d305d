// SPDX-License-Identifier: EPL-2.0
/** Tests of the job sheet of a fault-finding. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.faults;

// SPDX-License-Identifier: EPL-2.0
/** What is taken where a survey or a heater's data do not say, so that every check and every paper takes the same. */
@org.jspecify.annotations.NullMarked
package twinfeed.model.usual;

// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

/**
 * A reading of a dwelling for which the list has a column.
 *
 * @param column its column, from 0 among those of readings
 * @param path its path in a job, {@code survey.water.test.flow}
 * @param value what it is, as a file has it; empty if it is missing
 * @param origin where it is from
 */
record DwellingReading(int column, String path, String value, ReadingOrigin origin) {}

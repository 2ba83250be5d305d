/** What is wrong with a file or a place that a person named, and what would be right, in the language of the program. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.refusal;

// SPDX-License-Identifier: EPL-2.0
/**
 * The life of a quote: numbered, issued and frozen, decided, revised, compared.
 *
 * <p>An issued quote is one read-only file in canonical JSON (RFC 8785) with everything it rests on. Its SHA-256 stands in a file
 * beside it, in the form that common checksum programs read, so that anybody can see without this program whether a byte has
 * changed; it is no signature. What happens later, acceptance for example, is never written into it but into a file of its own
 * that can be created only once; a decision that was recorded by mistake is taken back by a correction, which is a file too.
 *
 * <p>More than twenty classes: the form of the file, its folder and the steps of a quote's life are hidden from each other's users, and
 * read together.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.quotes;

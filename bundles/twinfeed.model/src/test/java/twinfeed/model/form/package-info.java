// SPDX-License-Identifier: EPL-2.0
@org.jspecify.annotations.NullMarked
package twinfeed.model.form;

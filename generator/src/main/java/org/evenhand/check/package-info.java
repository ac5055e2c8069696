/**
 * Holds records, values and evidence against the rules, and changes nothing.
 *
 * <p>Each rule is a class of {@link org.evenhand.check.rule} with a page in docs/rules. A rule passes, makes a finding, or
 * says which field it lacks; a waiver turns a finding into a waived one. Most rules look at one study; a few, at
 * all files at once ({@link org.evenhand.check.FolderRule}). What findings do to a study is decided in one place,
 * {@link org.evenhand.check.CheckedStudy}.
 */
package org.evenhand.check;

/**
 * What templates see: immutable records of text that is already rounded, worded and ordered. Text is escaped when it is
 * printed; only {@link org.evenhand.page.view.Markup} is not. An absent text is empty, an absent record an empty
 * Optional; null is a fault of ours.
 */
package org.evenhand.page.view;

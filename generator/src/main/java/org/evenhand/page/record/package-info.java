/**
 * Builds the pages of what stays: test items, methods, instruments and runs. The checked folder enters; the bytes of pages
 * and the raw files of runs leave into a {@link org.evenhand.page.PageSink}.
 */
package org.evenhand.page.record;

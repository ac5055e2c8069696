/**
 * How pages say things: figures, verdicts, levels, counts, origins, hazards, reductions. Records of the model and figures of
 * the evidence enter; words leave. Whatever is written twice on a site is written here once, so that a number reads the
 * same in table, chart, quotation and list.
 */
package org.evenhand.page.words;

/**
 * Turns evidence into pages. Runs, evidence, findings, prose and charts enter as view models of {@link
 * org.evenhand.page.view}; HTML text leaves. Nothing here writes a file.
 */
package org.evenhand.page;

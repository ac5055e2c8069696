/**
 * The page of one question: its answer, or why it is withheld. A checked study enters; the page, its evidence as JSON and
 * CSV, its charts and ready-made quotations leave.
 */
package org.evenhand.page.answer;

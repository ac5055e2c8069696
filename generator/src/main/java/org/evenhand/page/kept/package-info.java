/**
 * What outlives the data: sealed versions of answers, and a page for each address whose subject is gone. In: a checked
 * folder, what was sealed, a former site. Out: frozen files, and pages.
 */
package org.evenhand.page.kept;

/**
 * Builds what shows the publication as a whole: index, caveats, changes, feed, map of the site, metadata. The checked folder
 * and the list of files made so far enter; pages and files leave.
 */
package org.evenhand.page.overview;

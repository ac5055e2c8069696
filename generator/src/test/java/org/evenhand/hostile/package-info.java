/** Folders whose every text means harm, and what a browser makes of their sites. */
package org.evenhand.hostile;

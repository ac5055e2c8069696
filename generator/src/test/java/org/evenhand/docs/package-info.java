/** Reads the guides under docs/, so that what they show can be tried. */
package org.evenhand.docs;

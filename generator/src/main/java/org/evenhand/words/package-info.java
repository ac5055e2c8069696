/**
 * What the program says, in each language that it speaks. A key and its arguments enter, with the language named by the
 * caller; the words of that language leave. Nothing here knows a current language, and data for machines never pass here.
 */
package org.evenhand.words;

/** Tests of prose. */
package org.evenhand.prose;

/** Inputs kept from fuzzing. What enters: files under {@code src/test/resources/fuzz}. What leaves: nothing. */
package org.evenhand.fuzz;

/**
 * Units, quantities and how they are written.
 *
 * <p>Text comes in ({@code "21.4 ± 0.5 °C"}); exact quantities of a closed table of units leave, or a fault that says
 * which characters are wrong and what to write instead. Knows nothing of files.
 */
package org.evenhand.quantity;

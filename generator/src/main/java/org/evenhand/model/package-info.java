/**
 * The words of the trade as immutable records: what a results folder holds, and what can be found wrong with it.
 *
 * <p>Nothing here reads or computes. A record knows where in its file each field stands.
 */
package org.evenhand.model;

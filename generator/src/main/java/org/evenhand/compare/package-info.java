/**
 * Values of runs in, evidence out: level summaries and comparisons, each with its interval and verdict.
 *
 * <p>Knows studies, but no rules: whether a comparison may be made at all is decided by the checks, which can only take a
 * verdict away. Which of several defensible definitions is used stands with each class and in docs/methods.md.
 */
package org.evenhand.compare;

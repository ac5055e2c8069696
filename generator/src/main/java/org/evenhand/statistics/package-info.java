/**
 * Estimates, intervals and tests.
 *
 * <p>Enters: plain numbers, one array or {@link org.evenhand.statistics.Sample} a level, all in one unit that the caller keeps.
 * Leaves: records of finite numbers in the same unit; what does not exist is an empty {@code Optional}, never NaN and never
 * infinity. The package knows nothing of runs, units or studies and imports no other package of the project.
 *
 * <p>The centre is {@link org.evenhand.statistics.Estimate}: a value with its type A and type B standard uncertainties and the
 * degrees of freedom of the type A part. Means, differences, slopes and logarithms of ratios are all estimates, so that there
 * is one interval and one t test. Formulas, assumptions, edge cases and sources: {@code docs/methods.md}.
 */
package org.evenhand.statistics;

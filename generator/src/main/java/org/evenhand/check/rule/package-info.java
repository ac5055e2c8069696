/**
 * The rules, one class each, named after the fault they find. Studies come in; findings leave.
 *
 * <p>The explanation of each stands in docs/rules under the rule's name, and is packed with the program.
 */
package org.evenhand.check.rule;

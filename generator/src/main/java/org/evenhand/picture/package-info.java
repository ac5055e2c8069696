/**
 * Pictures that authors hand in. A file of a results folder enters; its pixels leave, bounded, upright and on white, and
 * nothing else that the file held; or why it cannot be shown. It knows no study and writes nothing.
 */
package org.evenhand.picture;

/**
 * What was computed before: a key and bytes come in, and leave again when the key does.
 *
 * <p>A key is the digest of everything that the bytes depend on, the program itself included, so that nothing in a cache
 * is ever out of date. It may be deleted at any time, several processes may share it, and what is damaged in it counts
 * as not there. Nothing that goes wrong here makes a command fail: at worst it takes as long as the first time.
 */
package org.evenhand.cache;

/**
 * The pages as a browser shows them. Enters: files of a site, served on the loopback address. Leaves: what Debian's
 * Chromium made of them, asked by the Chrome DevTools Protocol. Tests that need it carry {@link NeedsChromium}.
 */
package org.evenhand.browser;

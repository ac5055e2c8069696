/**
 * The command preview: the site on loopback, renewed when the folder changes.
 *
 * <p>A results folder comes in; answers to a browser on this machine leave, and a word on each renewal. Nothing is written.
 */
package org.evenhand.command.preview;

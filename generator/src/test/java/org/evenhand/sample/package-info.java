/**
 * The physical model behind the invented sample: a seed enters, run files and logs of the sample's studies leave. What a person
 * writes (publication, items, instruments, methods, study texts) lives in the sample folder alone.
 */
package org.evenhand.sample;

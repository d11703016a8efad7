/**
 * What a car logs while it brakes: speed and distance, many times a second. A trace is put into the
 * form of a run log, a run a stop.
 */
package org.griplore.ingest.trace;

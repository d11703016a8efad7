/** Settles how tyres' names are written: which model a written name means, and how sure that is. */
package org.griplore.ingest.names;

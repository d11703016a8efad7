/** The user's decisions on names and descent: made by hand or carried from another archive. */
package org.griplore.ingest.decide;

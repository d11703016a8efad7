/**
 * Files as testers really have them, each with what it truly says, and how much of that the intake
 * reads: made by hand (resources of this package), built by code where they are binary, and drawn
 * by a seeded generator from a stated truth.
 */
package org.griplore.ingest.messy;

/**
 * Two disciplines against each other: what is gained in one and paid for in the other, inside
 * tests, between models and from one generation to the next.
 */
package org.griplore.query.tradeoff;

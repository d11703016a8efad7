/** Places, shares of places, and what chance alone would give. */
package org.griplore.query.ranking;

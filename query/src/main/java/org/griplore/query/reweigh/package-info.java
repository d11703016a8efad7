/** Past tests ranked anew under other weights, and under all weights. */
package org.griplore.query.reweigh;

/**
 * Factors and partial inverses of sparse symmetric matrices in block envelope form: what networks
 * of thousands of models are solved with. It knows nothing of tyres.
 */
package org.griplore.query.solver;

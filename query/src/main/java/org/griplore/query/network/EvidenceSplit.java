package org.griplore.query.network;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A network comparison split into the tests that held both models and the rest.
 *
 * <p>Direct: the differences inside those tests, weighted by their inverse variances (the network's
 * heterogeneity variance included). Indirect: what the network must add to give its result, {@code
 * 1/Vi = 1/Vn - 1/Vd} and {@code i = Vi (n/Vn - d/Vd)} (Bucher et al. 1997; Dias et al. 2010, Stat
 * Med 29:932; Koenig, Krahn and Binder 2013, Stat Med 32:5414).
 *
 * @param network the comparison by all tests
 * @param directTests number of tests that held both
 * @param direct estimate from those tests alone; empty when there are none
 * @param indirect estimate without them; empty when there is no other chain of tests
 * @param inconsistency direct minus indirect, with its z and p; empty unless both are there
 * @param directShare share of direct evidence, Vn / Vd, 0 to 1; empty when the two models cannot be
 *     compared
 * @param chained whether a chain of tests joins the two without any that held both: without one the
 *     indirect estimate is what other tyres in the shared tests weigh, and no evidence of its own
 */
public record EvidenceSplit(
    ModelComparison network,
    int directTests,
    Optional<Estimate> direct,
    Optional<Estimate> indirect,
    Optional<Estimate> inconsistency,
    OptionalDouble directShare,
    boolean chained) {}

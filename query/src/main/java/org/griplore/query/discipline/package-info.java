/**
 * What an archive says of models in one discipline under one filter: the results on one scale, the
 * fitted network they make, differences and generation steps as answers show them.
 */
package org.griplore.query.discipline;

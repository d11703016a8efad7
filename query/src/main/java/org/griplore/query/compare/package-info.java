/**
 * Models compared across tests that never share the same field: one network a discipline, in which
 * each test's own level cancels.
 */
package org.griplore.query.compare;

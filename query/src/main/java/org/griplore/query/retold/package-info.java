/**
 * One test that two reports tell under keys of their own: how such pairs are found, and which of
 * them counts until somebody decides.
 */
package org.griplore.query.retold;

/** Everything with a name, found as one types and however it is spelt. */
package org.griplore.query.directory;

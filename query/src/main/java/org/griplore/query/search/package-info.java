/** One box for everything with a name, and for notes. */
package org.griplore.query.search;

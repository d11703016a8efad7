/** How models ranked across tests. */
package org.griplore.query.placings;

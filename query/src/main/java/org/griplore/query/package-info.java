/** Griplore query. */
package org.griplore.query;

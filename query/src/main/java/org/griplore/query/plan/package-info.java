/** Planning a test: how many runs a difference needs, and in which order sets are run. */
package org.griplore.query.plan;

/** What the tyre label would say of a figure, of which edition, and why it can say nothing. */
package org.griplore.query.label;

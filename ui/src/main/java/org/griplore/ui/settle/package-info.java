/** The queue of names that nobody has decided on, as a question. */
package org.griplore.ui.settle;

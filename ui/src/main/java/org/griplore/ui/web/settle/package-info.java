/** The page on which names are settled, and descents decided. */
package org.griplore.ui.web.settle;

/** Addresses of pages, and texts as a page sets them: sentences with links, symbols. */
package org.griplore.ui.web.link;

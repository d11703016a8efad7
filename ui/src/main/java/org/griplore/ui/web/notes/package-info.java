/** Notes found, and a note written in the page. */
package org.griplore.ui.web.notes;

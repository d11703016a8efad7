/** What a request must pass before it reads or changes anything. */
package org.griplore.ui.web.gate;

/** The builder of comparison tables. */
package org.griplore.ui.web.comparison;

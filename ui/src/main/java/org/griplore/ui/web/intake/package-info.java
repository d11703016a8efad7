/**
 * The way of a table into the archive by the page: given, looked at, corrected, added, remembered.
 */
package org.griplore.ui.web.intake;

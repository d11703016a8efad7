/**
 * The explorer: a page for every question, with the same answers as the command line, and the same
 * answers as JSON, CSV and Markdown beside each page.
 */
package org.griplore.ui.web;

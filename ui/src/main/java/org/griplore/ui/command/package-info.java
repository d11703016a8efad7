/** The command line: questions from their definitions, and the commands that change something. */
package org.griplore.ui.command;

/**
 * What can be asked, defined once: a question's word, its options with their meaning, and how it is
 * answered. Command line, addresses, help and documents are all made from these definitions.
 */
package org.griplore.query.question;

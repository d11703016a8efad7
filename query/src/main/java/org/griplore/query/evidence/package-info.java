/**
 * The current contents of the archive, immutable and in columns, as questions use them: rankings,
 * filters that know their own sentence, names found however they are written.
 */
package org.griplore.query.evidence;

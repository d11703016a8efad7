/** Gives a whole archive away in an open form: a Frictionless Data Package. */
package org.griplore.store.export;

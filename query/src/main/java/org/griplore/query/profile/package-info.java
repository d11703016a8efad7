/** The record of a model, and of a line of models: what every discipline says of each. */
package org.griplore.query.profile;

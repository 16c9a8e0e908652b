/** Cutting, piecing, yardage and templates: from a quilt to what is bought, cut and sewn. */
package org.calicograph.workshop;

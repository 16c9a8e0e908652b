/**
 * A lesson gone through from its first words to its last drawing: {@link org.calicograph.desk.lessons.Lesson} takes it
 * apart into what is seen one after another, {@link org.calicograph.desk.lessons.LessonPage} shows that and takes answers.
 */
package org.calicograph.desk.lessons;

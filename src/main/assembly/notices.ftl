<#-- One line a jar: its file, who made it, its licence, where it comes from. -->
Calicograph is used with the libraries below, each in a jar of its own in the folder lib. They are
unchanged: any of them can be taken out and another build of it put in its place. The licence of
Calicograph itself is in the file LICENSE beside this one.

<#list dependencyMap as entry>
<#assign project = entry.getKey()/>
<#assign licences = entry.getValue()/>
${project.artifactId}-${project.version}.jar: ${project.name!project.artifactId}; <#list licences as licence>${licence}<#if licence_has_next> or </#if></#list>
</#list>

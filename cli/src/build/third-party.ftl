<#-- What is shipped beside slugpeak's own modules: one library a line, with its licences. -->
Third-party libraries that come with slugpeak, and their licences:

<#list dependencyMap as entry>
<#assign library = entry.getKey()/>
<#if library.groupId != "org.slugpeak">
  ${library.name} (${library.groupId}:${library.artifactId}:${library.version}): ${entry.getValue()?join(", ")}
</#if>
</#list>

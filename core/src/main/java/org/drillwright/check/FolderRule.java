package org.drillwright.check;

import java.util.List;
import org.drillwright.source.Finding;

/** One thing that is asked of a folder as a whole. */
public interface FolderRule {

    /** What people are told of the rule; its examples are the two files' or the school's lines that matter. */
    RuleText text();

    /** Looks at the folder and says what it finds. */
    List<Finding> judge(Folder folder);
}

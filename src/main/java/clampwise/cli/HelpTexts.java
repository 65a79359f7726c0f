package clampwise.cli;

/**
 * What the help of a command says around its options.
 *
 * @param description what the command is for
 * @param footer examples and where to go next, line by line
 */
record HelpTexts(String description, String... footer) {

  static final HelpTexts ROOT =
      new HelpTexts(
          "Reviews the design of rail-less solar layouts on metal roofs: a job file goes in, the"
              + " marks of a careful reviewer come out.",
          "A first run:",
          "  clampwise start my-job.yaml       write a small job with comments",
          "  clampwise review my-job.yaml      see what a reviewer would mark",
          "  clampwise explain                 list every rule",
          "",
          "Exit codes: 0 clear, 1 findings at or above the threshold,",
          "2 wrong usage or unreadable input, 70 a fault of clampwise itself.",
          "",
          "How to write a job: docs/job-file.md, or clampwise schema for your editor.",
          "No output of this program is an engineer's approval.");

  static final HelpTexts REVIEW =
      new HelpTexts(
          "Reviews jobs and prints what has to change, where, why and how.",
          "Examples:",
          "  clampwise review barn.yaml",
          "  clampwise review --lines north.yaml south.yaml",
          "  clampwise review jobs                     every job in a folder and below",
          "  clampwise review 'jobs/**/south*.yaml'    every file that matches",
          "  clampwise review --changed main jobs      those affected since a git revision",
          "  clampwise review --fail-on warning --quiet barn.yaml",
          "  clampwise review --format json - < barn.yaml",
          "  clampwise review --stdin-name jobs/barn.yaml -    text not saved yet",
          "  clampwise review --calc-sheet barn-loads.md barn.yaml",
          "  clampwise review --report barn.html --report barn.sarif barn.yaml",
          "  clampwise review --own-rules our-rules barn.yaml",
          "",
          "A report is what its ending says: .html and .pdf to read, .svg the drawing,",
          ".md a comment; .sarif, .xml (JUnit) and .json for programs; .csv the findings,",
          "attachments.csv the attachments.",
          "",
          "Exit codes: 0 clear, 1 findings at or above the threshold,",
          "2 wrong usage or unreadable input, 70 a fault of clampwise itself.");

  static final HelpTexts MERGE =
      new HelpTexts(
          "Joins the parts of a review that ran on several machines: the same output, reports and"
              + " exit code as one run.",
          "Example:",
          "  clampwise review --part 1/2 --to part-1 jobs       on one machine",
          "  clampwise review --part 2/2 --to part-2 jobs       on another",
          "  clampwise merge part-1 part-2 --report all.sarif",
          "",
          "Reports with drawings or calculations need the layouts themselves: review their job.");

  static final HelpTexts TAKEOFF =
      new HelpTexts(
          "Counts what jobs take: parts with spares, lengths, freight, crew time, and the same"
              + " modules on rails.",
          "Examples:",
          "  clampwise takeoff barn.yaml",
          "  clampwise takeoff --spares 0.05 --format csv barn.yaml > barn.csv",
          "",
          "Counted on the layout, one by one; what could not be counted is listed.",
          "Exit codes: 0 done, 2 wrong usage or unreadable input, 70 a fault.");

  static final HelpTexts ACCEPT =
      new HelpTexts(
          "Writes down, in the file beside a job, that somebody answers for a finding until a day.",
          "Examples:",
          "  clampwise accept barn/job.yaml 3 7 --reason 'shims drawn on S-4' \\",
          "      --by 'roof engineer' --until 2027-03-31",
          "  clampwise accept barn/job.yaml row-drifts-off-seams --subject fields.A \\",
          "      --reason 'crew re-measures' --by 'site lead' --until 2027-03-31",
          "",
          "The finding stays in every report, as accepted. It counts again when its day is",
          "past, when its number or its places get worse, or when it changes its load case.",
          "Exit codes: 0 written, 2 nothing written.");

  static final HelpTexts RECORD =
      new HelpTexts(
          "Records the findings that stand, so that a repository adopted late fails only on what"
              + " is new; later runs take solved ones out.",
          "Examples:",
          "  clampwise record jobs           begin the record, or take out what is solved",
          "  clampwise record --add jobs     record what is new, too",
          "",
          "Exit codes: 0 written, 2 a job or the record could not be read, 70 a fault.");

  static final HelpTexts COMPARE =
      new HelpTexts(
          "Says what became of a job: findings new, gone, worse, better, and what changed in the"
              + " layout.",
          "Examples:",
          "  clampwise compare barn-b.yaml barn-c.yaml",
          "  clampwise compare main jobs/barn/job.yaml         the branch main against now",
          "  clampwise compare v1:jobs/barn/job.yaml v2:jobs/barn/job.yaml",
          "  clampwise compare main HEAD                       every job of the repository",
          "",
          "Exit codes: 0 nothing new or worse at or above the threshold, 1 something is,",
          "2 wrong usage or unreadable input, 70 a fault.");

  static final HelpTexts POLICY =
      new HelpTexts(
          "Shows what a house asks of a job, and in which file and line that is written.",
          "Examples:",
          "  clampwise policy barn/job.yaml",
          "  clampwise policy --limits         the limits that a house may set itself",
          "",
          "Exit codes: 0 shown, 2 a policy cannot be read in full.");

  static final HelpTexts EXPLAIN =
      new HelpTexts(
          "Prints what a rule checks, why it matters and how to correct a finding.",
          "Examples:",
          "  clampwise explain",
          "  clampwise explain frame-outside-mid-clamp-range");

  static final HelpTexts RULES =
      new HelpTexts(
          "Tests rules of your own by the examples on their pages, or lists them.",
          "Examples:",
          "  clampwise rules test our-rules",
          "  clampwise rules list our-rules",
          "",
          "Rules are code: name only a folder that you trust. How to write them:",
          "docs/own-rules.md. Exit codes: 0 all hold, 1 an example fails,",
          "2 wrong usage or a rule that cannot be used.");

  static final HelpTexts CALC =
      new HelpTexts(
          "Runs a calculation and shows its work: formula, values put in, result, source.",
          "Examples:",
          "  clampwise calc",
          "  clampwise calc expansion",
          "  clampwise calc expansion metal=steel length=40ft coldest=0F hottest=160F",
          "",
          "Exit codes: 0 done, 2 wrong inputs or inputs for which it does not hold.");

  static final HelpTexts START =
      new HelpTexts(
          "Writes a small job with comments that reviews without errors. A file that exists is"
              + " never touched.",
          "Example:",
          "  clampwise start my-job.yaml");

  static final HelpTexts SCHEMA =
      new HelpTexts(
          "Prints the JSON Schema of the job file, for editors that complete and check keys.",
          "Example:",
          "  clampwise schema > job.schema.json");

  static final HelpTexts COMPLETION =
      new HelpTexts(
          "Prints the completion script of a shell.",
          "Examples:",
          "  source <(clampwise completion bash)",
          "  source <(clampwise completion zsh)       after compinit",
          "  clampwise completion fish | source");
}

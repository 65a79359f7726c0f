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

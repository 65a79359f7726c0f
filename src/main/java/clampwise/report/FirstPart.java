package clampwise.report;

import clampwise.finding.Subject;

/** The thing of the job that a subject belongs to: the first part of its path. */
final class FirstPart {

  private FirstPart() {}

  static String of(Subject subject) {
    int end = subject.path().indexOf(Subject.SEPARATOR);
    return end < 0 ? subject.path() : subject.path().substring(0, end);
  }
}

/**
 * Something a person must put right before Pinset can start. The message is one plain line that names the
 * setting or file and the remedy; the commands print it without a stack trace and end with code 1.
 */
export class StartProblem extends Error {
  override name = 'StartProblem';
}

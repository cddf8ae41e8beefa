import { errorCode } from './error-code';

// PostgreSQL's own: shutting down, starting, too many connections, statement timed out; Node's; and the client's.
const codes =
  /^(57P0[1-5]|57014|53300|08\d{3}|25P03|ECONN\w+|ETIMEDOUT|EPIPE|ENOTFOUND|EAI_AGAIN|P10(01|02|08|17)|P2024|P2028)$/;
const sentences =
  /connection (terminated|refused|timeout)|timeout exceeded when trying to connect|can't reach database|server has closed the connection|starting up|shutting down|recovery mode|not yet accepting/i;

/** Whether an error means that the database cannot be reached just now, so that the same request may succeed later. */
export function isUnavailable(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  if (codes.test(errorCode(error) ?? '') || sentences.test(error.message)) return true;
  return error.cause !== undefined && isUnavailable(error.cause);
}

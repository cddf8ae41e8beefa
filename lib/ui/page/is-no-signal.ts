/**
 * Whether something failed because no answer came: browsers have no code for that, only words of their own. What the
 * server has thrown carries a digest.
 */
export function isNoSignal(error: unknown): boolean {
  if (!(error instanceof Error) || 'digest' in error) return false;
  if (!navigator.onLine) return true;
  return error instanceof TypeError && /fetch|network|load failed/i.test(error.message);
}

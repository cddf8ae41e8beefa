/** Where so little takes longer, what the reader sends next would not get through either. */
const longestMs = 10_000;

/**
 * Whether the server can be reached now, before `signal` gives up. A phone may believe itself online where nothing comes
 * through, and wait for minutes, so it is asked for something small that no worker answers in its place.
 */
export async function serverAnswers(signal: AbortSignal = AbortSignal.timeout(longestMs)): Promise<boolean> {
  try {
    const answer = await fetch('/sw.js', { method: 'HEAD', cache: 'no-store', redirect: 'error', signal });
    return answer.ok;
  } catch {
    return false;
  }
}

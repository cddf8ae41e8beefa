/**
 * Whether the server can be reached now. A phone may believe itself online where nothing comes through, so it is asked for
 * something small that no worker answers in its place.
 */
export async function serverAnswers(): Promise<boolean> {
  try {
    const answer = await fetch('/sw.js', { method: 'HEAD', cache: 'no-store', redirect: 'error' });
    return answer.ok;
  } catch {
    return false;
  }
}

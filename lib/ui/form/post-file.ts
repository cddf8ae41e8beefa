import { readAnswer } from '@/lib/offline/read-answer';

/** Where the page goes on to, or why nothing was taken in, in the reader's language. */
export type FileAnswer = { readonly goOnTo: string } | { readonly refused: string };

function answerIn(body: unknown): FileAnswer | undefined {
  if (typeof body !== 'object' || body === null) return undefined;
  // Only a path of this site: "//" would begin the name of another.
  if ('goOnTo' in body && typeof body.goOnTo === 'string' && /^\/(?!\/)/.test(body.goOnTo))
    return { goOnTo: body.goOnTo };
  const answer = readAnswer(body);
  return answer?.kind === 'refused'
    ? { refused: answer.errors.map(({ text }) => text).join(' ') }
    : undefined;
}

/**
 * Posts a form with its file from the page, so that the page stands where no answer comes. Undefined where none came, or
 * one that is not the server's own, such as the page of a network without internet.
 */
export async function postFile(address: string, data: FormData): Promise<FileAnswer | undefined> {
  try {
    const headers = { accept: 'application/json' };
    const response = await fetch(address, { method: 'POST', body: data, headers });
    return answerIn(await response.json());
  } catch {
    return undefined;
  }
}

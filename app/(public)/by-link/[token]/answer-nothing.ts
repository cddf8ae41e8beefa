import { getLocale, getTranslations } from 'next-intl/server';
import { takeWrongOpening } from './link-limit';

const plainText = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const style =
  'body{font:1.125rem/1.5 system-ui,sans-serif;max-width:34rem;margin:4rem auto;padding:0 1rem;color:#1d2321;background:#f7f5ef}' +
  '@media(prefers-color-scheme:dark){body{color:#e9e6df;background:#16181b}}';

/** One plain page for every address that opens nothing: wrong, expired and withdrawn are told alike. */
export async function answerNothing(): Promise<Response> {
  const t = await getTranslations('links');
  const wait = takeWrongOpening();
  const [heading, text] = wait === 0 ? [t('gone'), t('goneText')] : [t('gone'), t('busy')];
  const page = `<!doctype html><html lang="${(await getLocale()).slice(0, 2)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="robots" content="noindex, nofollow"><title>${plainText(heading)} – Pinset</title><style>${style}</style></head><body><main><h1>${plainText(heading)}</h1><p>${plainText(text)}</p></main></body></html>`;
  return new Response(page, {
    status: wait === 0 ? 404 : 429,
    headers: {
      'content-type': 'text/html; charset=utf-8',
      'cache-control': 'no-store',
      ...(wait === 0 ? {} : { 'retry-after': String(wait) }),
    },
  });
}

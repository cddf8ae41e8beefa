import type { Signal } from '@/lib/analysis/watch-question/signal';
import { signalPath } from '@/lib/ui/watch/signal-path';
import { type SignalWords, signalSentence } from '@/lib/ui/watch/signal-sentence';
import { sinceText } from '@/lib/ui/watch/since-text';

export type Letter = { readonly subject: string; readonly text: string; readonly html: string };

type Content = {
  readonly network: string;
  readonly name: string;
  /** Address of this installation, without a slash at its end. */
  readonly url: string;
  /** Those that are not answered, the newest first. */
  readonly signals: readonly Signal[];
};

/** So many lines are written out; the rest is on the page. */
const mostLines = 20;

const escaped = (text: string) => text.replace(/[&<>"']/g, (mark) => `&#${mark.codePointAt(0)};`);

/** The week's signals as a letter, plain and in simple HTML, in the reader's language. */
export function digestLetter({ network, name, url, signals }: Content, words: SignalWords): Letter {
  const t = (key: string, values?: Record<string, string | number>) =>
    words.words(`watch.digest.${key}`, values);
  const count = signals.length;
  const lines = signals.slice(0, mostLines).map((signal) => ({
    sentence: signalSentence(signal, words),
    since: words.words('watch.watch.since', { when: sinceText(signal, words.locale) }),
    link: `${url}${signalPath(signal)}`,
  }));
  const greeting = t('greeting', { name });
  const lead = t('lead', { count, network });
  const more = count > mostLines ? [t('more', { count: count - mostLines })] : [];
  const list = `${url}/questions/watch`;
  const [answer, stop] = [t('answer'), t('stop')];
  const text = [
    ...[greeting, '', lead, ''],
    ...lines.flatMap(({ sentence, since, link }) => [`- ${sentence}`, `  ${since}: ${link}`, '']),
    ...more,
    ...[`${answer} ${list}`, '', `${stop} ${url}/account/digest`, ''],
  ].join('\n');
  const paragraph = (inner: string) => `<p>${inner}</p>`;
  const linked = (address: string, label: string) => `<a href="${escaped(address)}">${escaped(label)}</a>`;
  const html = [
    paragraph(escaped(greeting)),
    paragraph(escaped(lead)),
    lines.length === 0 ? '' : '<ul>',
    ...lines.map(({ sentence, since, link }) => `<li>${escaped(sentence)} ${linked(link, since)}</li>`),
    lines.length === 0 ? '' : '</ul>',
    ...more.map((line) => paragraph(escaped(line))),
    paragraph(linked(list, answer)),
    paragraph(linked(`${url}/account/digest`, stop)),
  ].join('\n');
  return { subject: t('subject', { count, network }), text, html };
}

import { createTranslator } from 'next-intl';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { Language } from '@/lib/database/generated/enums';
import type { WhereItWent } from '@/lib/records/trace/where-it-went';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import type { TraceWords } from '@/lib/ui/trace/trace-words';
import { Whereabouts } from '@/lib/ui/trace/whereabouts';

const all = { batches: 111, open: 9, live: 118, contaminated: 60, lostClean: 4, freshGrams: 0 };
const went = { all, lotsMade: 3, sites: [{ ...all, siteId: 'mill', siteName: 'Mill Lane' }] } as Pick<
  WhereItWent,
  'all' | 'lotsMade' | 'sites'
> as WhereItWent;

function page(language: Language, of: 'lot' | 'made') {
  const t = createTranslator({ locale: language, messages: loadMessages(language), namespace: 'trace' });
  const words: Partial<Record<keyof TraceWords, unknown>> = { t, totalMass: String };
  return renderToStaticMarkup(<Whereabouts went={went} of={of} words={words as TraceWords} />);
}

test('batches of spawn made from a lot are told as those of other lots, and are not the page’s answer', () => {
  const made = page('en', 'made');
  expect(made).toContain(
    '3 lots of spawn made from it went into 111 batches at 1 site, not counted above: these are other lots.',
  );
  expect(made).not.toContain('answer-sentence');
  expect(page('es', 'made')).toContain('sin contar arriba: son otros lotes.');
});

test('a lot’s own batches are the answer of its page', () => {
  expect(page('en', 'lot')).toContain('answer-sentence">It went into 111 batches at 1 site.');
});

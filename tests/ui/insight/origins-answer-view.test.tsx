import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { JudgedOrigin } from '@/lib/analysis/lot-question/judged-origin';
import type { Language } from '@/lib/database/generated/enums';
import { OriginsAnswerView } from '@/lib/ui/insight/origins-answer-view';
import { sentenceWords } from './sentence-words';

const maker = (verdict: JudgedOrigin['verdict']): JudgedOrigin => ({
  ...{ origin: 'Larkmoor spawn room', verdict, lots: 7, batches: 350, sites: 20, units: 5_000 },
  ...{ observed: 501, expected: 512, ratio: 0.98, low: 0.8, high: 1.2, falseDiscovery: 0.7 },
});

const page = (language: Language, verdict: JudgedOrigin['verdict']) =>
  renderToStaticMarkup(
    <OriginsAnswerView
      of="spawnMakers"
      answer={{ kind: 'judged', leftOut: 0, origins: [maker(verdict)] }}
      codes={new Map()}
      apart={[]}
      apartFrom={() => [{ id: 'pearl', code: 'S-PEARL-07' }]}
      words={{ ...sentenceWords(language), locale: language }}
    />,
  );
const said = (markup: string) => markup.replaceAll(/<[^>]+>/g, '');

test('a maker judged without a lot that is called out is told so, with the way to that lot’s own page', () => {
  const english = page('en', 'as-expected');
  expect(english).toContain('href="/spawn-lots/pearl"');
  expect(said(english)).toContain(
    'Larkmoor spawn room is judged without a lot that is called out itself and told on its own page: S-PEARL-07',
  );
  expect(said(english)).toContain('without S-PEARL-07');
  expect(said(page('es', 'as-expected'))).toContain(
    'Larkmoor spawn room se juzga sin un lote que está señalado él mismo y se explica en su propia página: S-PEARL-07',
  );
});

test('the sentence that calls out a maker says over how many lots, and apart from which', () => {
  expect(said(page('en', 'loses-more'))).toContain(
    'over 7 lots, apart from S-PEARL-07, which is told on its own page.',
  );
  expect(said(page('es', 'loses-more'))).toContain(
    'en 7 lotes, sin contar S-PEARL-07, que se explica en su propia página.',
  );
});

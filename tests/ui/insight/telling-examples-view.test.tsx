import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { TellingExample } from '@/lib/analysis/loss-question/losses-answer';
import type { Language } from '@/lib/database/generated/enums';
import { TellingExamplesView } from '@/lib/ui/insight/telling-examples-view';
import { sentenceWords } from './sentence-words';

const pearl: TellingExample = {
  ...{ source: 'spawn lot', levelId: 'pearl', code: 'S-PEARL-07', siteId: 'mill', methodKey: 'bath' },
  ...{ batches: 48, units: 945, found: 520, expected: 126, odds: { estimate: 8.4, low: 6, high: 11.7 } },
};

const said = (language: Language, examples: readonly TellingExample[]) =>
  renderToStaticMarkup(
    <TellingExamplesView
      examples={examples}
      noneOut={[{ source: 'run', levels: 407 }]}
      words={{ ...sentenceWords(language), locale: language }}
    />,
  ).replaceAll(/<[^>]+>/g, '');

test('of a source of which no single one stands out the page says so, with how many were looked at', () => {
  expect(said('en', [])).toBe(
    'Treatment run: of 407, no single one stands out beyond what chance does among so many.',
  );
  expect(said('es', [])).toBe(
    'Tratamiento: de 407, ninguno destaca por sí solo más de lo que hace destacar el azar entre tantos.',
  );
});

test('odds beside counts are said to be drawn towards the usual', () => {
  expect(said('en', [pearl])).toContain('The odds are drawn towards the usual');
  expect(said('es', [pearl])).toContain('Los momios se acercan a lo corriente');
});

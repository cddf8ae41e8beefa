import { createTranslator } from 'next-intl';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { MethodCost } from '@/lib/analysis/next-question/method-cost';
import type { InsightWords } from '@/lib/ui/insight/insight-words';
import { NextCost } from '@/lib/ui/insight/next-cost';
import { loadMessages } from '@/lib/ui/messages/load-messages';

test('a few minutes of work for ten of dry material are told with their decimals', () => {
  const given: Partial<Record<keyof InsightWords, unknown>> = {
    t: createTranslator({ locale: 'en-US', messages: loadMessages('en'), namespace: 'insight' }),
    ...{ locale: 'en-US', language: 'en' },
  };
  const cost: MethodCost = {
    ...{ of: 'site', currency: 'USD', fuelMinor: null, waterMinor: null, waterLitres: null, fullMinor: null },
    labourMinutes: { amount: 6.4, batches: 3 },
  };
  const told = (perKilogram: number) =>
    renderToStaticMarkup(
      <NextCost cost={cost} volumeUnit="litre" perKilogram={perKilogram} words={given as InsightWords} />,
    );
  expect(told(1)).toContain('6.4 min of work (3 batches)');
  expect(told(2.2046226218)).toContain('2.9 min of work (3 batches)');
});

import { createTranslator } from 'next-intl';
import { expect, test } from 'vitest';
import type { Signal } from '@/lib/analysis/watch-question/signal';
import type { DynamicWords } from '@/lib/ui/i18n/dynamic-words';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { signalSentence } from '@/lib/ui/watch/signal-sentence';
import { sinceText } from '@/lib/ui/watch/since-text';

const records = (codes: readonly string[]): Signal => ({
  ...{ kind: 'records', siteId: 'mill', missing: codes.length, implausible: 0 },
  ...{ key: 'records:mill:2026-11-27', since: '2026-11-27', oldest: '2026-11-15', codes },
});
const said = (codes: readonly string[], language: 'en' | 'es' = 'en') =>
  signalSentence(records(codes), {
    words: createTranslator({
      locale: language,
      messages: loadMessages(language),
    }) as unknown as DynamicWords,
    ...{ locale: language, siteName: () => 'Mill Lane', codes: new Map() },
  });

test('records that went missing are named by the codes of their batches, the oldest first', () => {
  expect(said(['MLG-4', 'MLG-9'])).toMatch(/2 records went missing .*: MLG-4 and MLG-9\.$/);
  expect(said(['MLG-4', 'MLG-9'], 'es')).toMatch(/faltan 2 registros .*: MLG-4 y MLG-9\.$/);
});

test('of many records that went missing a few are named and the others counted', () => {
  expect(said(['A', 'B', 'C', 'D'])).toMatch(/: A, B, C,? and D\.$/);
  expect(said(['A', 'B', 'C', 'D', 'E', 'F'])).toMatch(/: A, B, C and 3 more\.$/);
  expect(said(['A', 'B', 'C', 'D', 'E', 'F'], 'es')).toMatch(/: A, B, C y 3 más\.$/);
});

test('records that went missing stand since the oldest of them', () => {
  expect(sinceText(records(['A', 'B']), 'en-US').replaceAll('\u00a0', ' ')).toBe('15 Nov 2026');
});

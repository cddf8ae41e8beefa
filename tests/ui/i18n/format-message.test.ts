import { type MessageFormatElement, parse, TYPE } from '@formatjs/icu-messageformat-parser';
import { _createCache, _createIntlFormatters } from 'use-intl/core';
import library from 'use-intl/format-message';
import { describe, expect, test } from 'vitest';
import type { Language } from '@/lib/database/generated/enums';
import formatMessage from '@/lib/ui/i18n/format-message';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { leaves } from '../messages/message-arguments';

type Value = string | number | Date;
type Kinds = Map<string, readonly Value[]>;

const counts = [0, 1, 2, 3, 21, 1234.5];

/** What each argument of a message may be, so that every branch is taken. */
function kindsOf(elements: readonly MessageFormatElement[], into: Kinds = new Map()): Kinds {
  for (const element of elements) {
    if (element.type === TYPE.argument) into.set(element.value, into.get(element.value) ?? ['straw', 0.5]);
    if (element.type === TYPE.number) into.set(element.value, counts);
    if (element.type === TYPE.date || element.type === TYPE.time)
      into.set(element.value, [new Date('2026-03-01T23:30:00Z')]);
    if (element.type === TYPE.plural) into.set(element.value, counts);
    if (element.type === TYPE.select) into.set(element.value, Object.keys(element.options));
    if (element.type === TYPE.plural || element.type === TYPE.select)
      for (const option of Object.values(element.options)) kindsOf(option.value, into);
  }
  return into;
}

/** Every value of each argument, beside each value of the first one that chooses a branch. */
function valuesOf(kinds: Kinds): Record<string, Value>[] {
  const longest = Math.max(1, ...[...kinds.values()].map((values) => values.length));
  return Array.from({ length: longest * longest }, (_, at) =>
    Object.fromEntries(
      [...kinds].map(([name, values], place) => [
        name,
        values[(place % 2 === 0 ? at : Math.floor(at / longest)) % values.length] ?? '',
      ]),
    ),
  );
}

describe('Messages', () => {
  const cache = _createCache();
  const formatters = _createIntlFormatters(cache);
  const options = (locale: string) => ({ cache, formatters, locale, timeZone: 'UTC' });

  test.each<[Language, string]>([
    ['en', 'en-GB'],
    ['en', 'en-US'],
    ['es', 'es-ES'],
    ['es', 'es-US'],
  ])(
    'of %s are written for %s as the library itself writes them',
    (language, locale) => {
      const texts = leaves(loadMessages(language));
      expect(texts.size).toBeGreaterThan(1000);
      for (const [key, text] of texts) {
        for (const values of valuesOf(kindsOf(parse(text)))) {
          const own = formatMessage(key, text, values, options(locale));
          expect(own, `${key} of ${JSON.stringify(values)}`).toBe(
            library(key, text, values, options(locale)),
          );
        }
      }
    },
    60_000,
  );

  test('that are not given a value they name are refused by that name', () => {
    const written = () =>
      formatMessage('batches.ofUnits', '{count} of {total}', { count: 3 }, options('en-US'));
    expect(written).toThrow('batches.ofUnits is not given its total');
  });
});

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import * as vocabulary from '@/lib/growing/vocabulary';
import { loadMessages } from '@/lib/ui/messages/load-messages';

const schema = readFileSync(path.join(import.meta.dirname, '../../../prisma/schema.prisma'), 'utf8');

/** Enum names of the schema in camel case, each with its values. */
const enums = [...schema.matchAll(/^enum (\w)(\w*) \{([^}]*)\}/gm)].map(
  ([, first = '', rest = '', body = '']) => ({
    name: first.toLowerCase() + rest,
    values: body
      .split('\n')
      .map((line) => line.trim())
      .filter((line) => /^\w+$/.test(line)),
  }),
);

describe.each(['en', 'es'] as const)('the vocabulary in %s', (language) => {
  const words: Readonly<Record<string, Readonly<Record<string, string>>>> = loadMessages(language).vocabulary;

  test.each(enums)('has a word for every value of $name', ({ name, values }) => {
    expect(values.length).toBeGreaterThan(0);
    expect(Object.keys(words[name] ?? {})).toEqual(expect.arrayContaining(values));
  });

  test('counts every kind of container', () => {
    expect(Object.keys(words.containerCount ?? {}).sort()).toEqual([...vocabulary.containerKinds].sort());
  });
});

test('the schema has the enums that the check reads', () => {
  expect(enums.length).toBeGreaterThan(20);
});

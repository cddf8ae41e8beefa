import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { messageArguments } from './message-arguments';
import { usedCodes } from './used-codes';

const root = path.join(import.meta.dirname, '../../..');
const used = usedCodes(['lib/records', 'lib/access', 'lib/base'].map((folder) => path.join(root, folder)));
const { errors, questions } = loadMessages('en');
const words: Readonly<Record<string, string>> = { ...questions, ...errors };

describe('codes of refusals and questions', () => {
  test('all have a sentence in the catalogues', () => {
    const silent = used.filter(({ code }) => words[code] === undefined);
    expect(silent.map(({ where, code }) => `${path.relative(root, where)}: ${code}`)).toEqual([]);
  });

  test('come with every value that their sentence names', () => {
    const lacking = used.flatMap(({ where, code, values }) => {
      const needed = messageArguments(words[code] ?? '').filter((name) => name !== 'label');
      const missing = values === undefined ? [] : needed.filter((name) => !values.includes(name));
      return missing.length === 0 ? [] : [`${path.relative(root, where)}: ${code} lacks ${missing}`];
    });
    expect(lacking).toEqual([]);
  });

  test('never mean a refusal and a question at once', () => {
    expect(Object.keys(questions).filter((code) => code in errors)).toEqual([]);
  });

  test('are found in the sources at all', () => {
    expect(used.length).toBeGreaterThan(40);
    expect(used.map(({ code }) => code)).toContain('missing');
  });
});

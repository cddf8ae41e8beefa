import { describe, expect, it } from 'vitest';
import type { Signal } from '@/lib/analysis/watch-question/signal';
import { digestLetter } from '@/lib/digest/digest-letter';
import { wordsFor } from '@/lib/ui/i18n/words-for';

const run = (at: number): Signal => ({
  kind: 'run',
  key: `run:${at}:cut_short`,
  since: '2026-07-14',
  siteId: 'site',
  runId: `run-${at}`,
  code: `T-${at}`,
  verdict: 'cut_short',
});
const letterOf = (signals: readonly Signal[], language: 'en' | 'es' = 'en', siteName = 'Mill Lane') =>
  digestLetter(
    { network: 'Larkmoor', name: 'Wren', url: 'https://pinset.example', signals },
    { words: wordsFor(language, language), locale: language, siteName: () => siteName, codes: new Map() },
  );

describe('the letter of the week', () => {
  it('says each signal with the day and a link, and where to answer and to stop', () => {
    const { subject, text } = letterOf([run(1)]);
    expect(subject).toBe('Larkmoor: one thing needs a look');
    expect(text).toContain('- Treatment T-1 at Mill Lane was shorter than its window asks.');
    expect(text).toContain('https://pinset.example/treatments/run-1');
    expect(text).toContain('https://pinset.example/questions/watch');
    expect(text).toContain('https://pinset.example/account/digest');
  });

  it('writes out twenty and counts the rest', () => {
    const { text } = letterOf(Array.from({ length: 23 }, (_, at) => run(at)));
    expect(text.match(/^- /gm)).toHaveLength(20);
    expect(text).toContain('And 3 more on the page.');
  });

  it('lets no name become markup', () => {
    const { html } = letterOf([run(1)], 'en', '<b>"Mill" & Lane</b>');
    expect(html).not.toContain('<b>');
    expect(html).toContain('&#60;b&#62;');
  });

  it('is Spanish for who reads Spanish', () => {
    expect(letterOf([run(1)], 'es').text).toContain('El tratamiento T-1 en Mill Lane duró menos');
  });
});

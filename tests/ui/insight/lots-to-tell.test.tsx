import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { JudgedLot } from '@/lib/analysis/lot-question/lots-answer';
import { LotsToTell } from '@/lib/ui/insight/lots-to-tell';
import { sentenceWords } from './sentence-words';

const lot = { lotId: 'pearl' } as JudgedLot;
const notice = { lotId: 'pearl', noticeId: 'n', sites: 14, readSites: 11 };
const page = (told: readonly (typeof notice)[]) =>
  renderToStaticMarkup(
    <LotsToTell lots={[lot]} codeOf={() => 'S-PEARL-07'} told={told} words={sentenceWords('en')} />,
  );

describe('a lot that loses more', () => {
  it('is offered to be told to its sites while nobody has been told', () => {
    expect(page([{ ...notice, lotId: 'another' }])).toContain(
      'href="/lot-notices/new/spawn-lot/pearl?called=out"',
    );
  });

  it('says that a notice stands, how far it is read and where, instead of offering it again', () => {
    const told = page([notice]);
    expect(told.replaceAll(/<[^>]+>/g, '')).toContain('it was read at 11 of 14 sites. Open the notice');
    expect(told).toContain('href="/spawn-lots/pearl"');
    expect(told).not.toContain('lot-notices/new');
  });
});

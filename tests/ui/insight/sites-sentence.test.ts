import { describe, expect, it } from 'vitest';
import { pageOfList } from '@/lib/ui/insight/page-of-list';
import { sitesListed } from '@/lib/ui/insight/sites-listed';
import { sitesSentence } from '@/lib/ui/insight/sites-sentence';
import { sentenceWords } from './sentence-words';

const sitesOf = (count: number, more: number) =>
  Array.from({ length: count }, (_, at) => ({
    siteId: `Plot ${at + 1}`,
    verdict: at < more ? ('more' as const) : ('alike' as const),
  }));

describe('the answer about sites', () => {
  it('names them all where they are few', () => {
    const sentence = sitesSentence(sitesOf(14, 9), sentenceWords('en'));
    expect(sentence).toContain('Plot 8, and Plot 9 would lose more than a typical site');
    expect(sitesListed(sitesOf(100, 9), '3').rows).toHaveLength(100);
  });

  it('names eight of many and says how many more, in both languages', () => {
    const sites = sitesOf(1000, 42);
    expect(sitesSentence(sites, sentenceWords('en'))).toContain('Plot 8, and 34 more would lose more');
    expect(sitesSentence(sites, sentenceWords('es'))).toContain('Plot 8 y 34 más se perdería más');
    expect(sitesSentence(sites, sentenceWords('en'))).toContain('The other 958 sites cannot be told');
  });

  it('lists of more than a hundred only those that can be told from a typical one, 25 a page', () => {
    const sites = sitesOf(1000, 42);
    const told = sitesOf(42, 42);
    expect(sitesListed(sites, undefined).rows).toEqual(told.slice(0, 25));
    expect(sitesListed(sites, '2')).toMatchObject({ rows: told.slice(25), count: 42, page: 2, pages: 2 });
    for (const nearest of ['7', '999999']) expect(sitesListed(sites, nearest).page).toBe(2);
    for (const none of ['0', '-1', 'x', '', ['2', '3']]) expect(sitesListed(sites, none).page).toBe(1);
    expect(sitesListed(sitesOf(1000, 0), '2')).toMatchObject({ rows: [], count: 0, page: 1, pages: 1 });
  });

  it('shows every site on one of its pages, and none twice', () => {
    const ids = Array.from({ length: 130 }, (_, at) => at);
    const { pages } = pageOfList(ids, undefined, 100);
    const seen = Array.from({ length: pages }, (_, at) => pageOfList(ids, String(at + 1), 100).rows).flat();
    expect(seen).toEqual(ids);
    expect(pageOfList(ids, '2', 130)).toMatchObject({ rows: ids, page: 1, pages: 1 });
  });
});

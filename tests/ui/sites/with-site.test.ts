import { describe, expect, it } from 'vitest';
import { nextPath } from '@/lib/access/next-path';
import { withAnswers, withSite } from '@/lib/ui/sites/with-site';

describe('the way from a filter to a site and back', () => {
  it('takes along what else was chosen, and what is asked more than once', () => {
    const came = {
      ...{ next: '/batches', siteName: 'mill', sitePage: '2' },
      ...{ method: 'm1', from__year: '2026', name: 'Juniper', equipment: ['a', 'b'], code: '' },
    };
    const next = withAnswers('/batches', came);
    expect(next).toBe('/batches?method=m1&from__year=2026&name=Juniper&equipment=a&equipment=b');
    // The same way once more, as from the next page of sites, adds nothing.
    expect(withAnswers(next, { next, sitePage: '3' })).toBe(next);
  });

  it('leads to one site or to all, from the first page on, and takes no equipment from one to another', () => {
    const address =
      '/weighings?site=old&after=x&before=y&page=4&state=open&equipment=these&methods=m1&methods=m2';
    expect(withSite(address, 'new')).toBe('/weighings?state=open&site=new');
    expect(withSite(address, undefined)).toBe('/weighings?state=open');
  });

  it('stays within the product whatever the address says', () => {
    const next = nextPath('/batches');
    expect(next).toBe('/batches');
    expect(
      withSite(withAnswers('/batches', { x: '//elsewhere.example' }), 'https://elsewhere.example'),
    ).toMatch(/^\/batches\?/);
  });
});

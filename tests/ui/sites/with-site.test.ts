import { describe, expect, it } from 'vitest';
import { nextPath } from '@/lib/access/next-path';
import { siteChoiceAddress } from '@/lib/ui/sites/site-choice-address';
import { withAnswers, withFormSite, withSite } from '@/lib/ui/sites/with-site';

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

  it('brings a form its site and leaves in its address what else was there', () => {
    const form = '/batches/new?siteId=old&repeat=r&container=jar&components.0.treatment=run:x&equipment=e';
    const way = new URL(siteChoiceAddress(form, 'start'), 'http://here.invalid');
    expect(Object.fromEntries(way.searchParams)).toEqual({ next: form, siteFor: 'start' });
    const next = withAnswers(form, { ...Object.fromEntries(way.searchParams), siteName: 'mill' });
    expect([...new URL(withFormSite(next, 'new'), 'http://here.invalid').searchParams]).toEqual([
      ...[...new URL(form, 'http://here.invalid').searchParams].map(([name, value]) => [
        ...[name, name === 'siteId' ? 'new' : value],
      ]),
    ]);
    expect(withFormSite('/import?site=old&kind=batches', 'new')).toBe('/import?kind=batches&siteId=new');
    expect(withFormSite('/import', 'https://elsewhere.example')).toMatch(/^\/import\?/);
  });

  it('stays within the product whatever the address says', () => {
    const next = nextPath('/batches');
    expect(next).toBe('/batches');
    expect(
      withSite(withAnswers('/batches', { x: '//elsewhere.example' }), 'https://elsewhere.example'),
    ).toMatch(/^\/batches\?/);
  });
});

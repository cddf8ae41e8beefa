import { existsSync } from 'node:fs';
import path from 'node:path';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { guideSteps } from '@/lib/ui/help/guide-steps';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { Failure } from '@/lib/ui/page/failure';

const root = path.join(import.meta.dirname, '../../..');
const groups = ['(signed)', '(person)', '(public)', '(help)'];
const steps = Object.values(guideSteps).flat();
const hrefOf = (step: (typeof steps)[number]) => ('href' in step ? step.href : undefined);

describe('the guide of each role', () => {
  it.each(steps.flatMap((step) => hrefOf(step) ?? []))('leads to %s, which is a page', (href) => {
    const places = groups.filter((group) => existsSync(path.join(root, `app/${group}${href}/page.tsx`)));
    expect(places).toHaveLength(1);
  });

  it.each(['en', 'es'] as const)('has a word for every step and every link in %s', (language) => {
    const { steps: told, links } = loadMessages(language).help as {
      steps: Record<string, string>;
      links: Record<string, string>;
    };
    expect(steps.filter((step) => told[step.words] === undefined)).toEqual([]);
    expect(steps.filter((step) => hrefOf(step) !== undefined && links[step.words] === undefined)).toEqual([]);
  });
});

describe('a page that broke', () => {
  it.each([
    ['en', 'Help'],
    ['es', 'Ayuda'],
  ])('has the help link in its footer, as every page does, in %s', (language, word) => {
    const html = renderToStaticMarkup(
      <Failure error={new Error('broken')} retry={() => undefined} language={language} />,
    );
    expect(html).toContain(`<footer class="page-footer"><a href="/help">${word}</a></footer>`);
  });
});

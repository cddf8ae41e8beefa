import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { SaidWords } from '@/lib/ui/report/said-words';

it('The coordinator’s own words beside figures are a quotation that says whose words they are', () => {
  const page = renderToStaticMarkup(
    <SaidWords words={'In all 9,999 kg.\n\nAt 20 sites.'} label="The coordination’s own words" />,
  );
  expect(page).toBe(
    '<blockquote class="said-words"><p class="said-words-label">The coordination’s own words</p><p>In all 9,999 kg.</p><p>At 20 sites.</p></blockquote>',
  );
  expect(renderToStaticMarkup(<SaidWords words="A story." />)).toBe('<p>A story.</p>');
});
